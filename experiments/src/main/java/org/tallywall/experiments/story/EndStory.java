package org.tallywall.experiments.story;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.record.GameRecord;

/** Tells how a game ended and who pays. */
final class EndStory {
  private final GameRecord game;
  private final Card card;
  private final SeatNames seats;
  private final TileWords words;
  private final StoryTable table;

  EndStory(GameRecord game, Card card, SeatNames seats, TileWords words, StoryTable table) {
    this.game = game;
    this.card = card;
    this.seats = seats;
    this.words = words;
    this.table = table;
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add("The end");
    GameRecord.Win win = game.end().win();
    if (win == null) {
      boolean wall = game.end().how().equals("wall-game");
      lines.add(
          wall
              ? "  It is a wall game: the wall is used up and nobody wins."
              : "  Three hands are dead, so the game is void.");
    } else {
      lines.add("  " + Sentences.sentence(seats.of(win.seat()) + " wins" + how(win)));
      lines.add(
          "  The line is %s, worth %s%s."
              .formatted(LineNames.of(card, win.line()), win.value(), jokerless(win)));
      lines.add("  The hand is " + words.hand(win.hand()) + ", made " + jokers(win) + ".");
    }
    for (int seat = 0; seat < seats.names().size(); seat++) {
      int points = game.end().points().get(seat);
      if (points != 0) {
        String verb = points > 0 ? " collects " : " pays ";
        lines.add("  " + Sentences.sentence(seats.of(seat) + verb + Math.abs(points)));
      }
    }
    return lines;
  }

  private String how(GameRecord.Win win) {
    return switch (win.by()) {
      case "draw" -> ", self-picked";
      case "exchange" -> " with the joker from an exchange";
      case "deal" -> " before play begins: the hand is complete";
      default -> " on a tile thrown by " + seats.player(win.from());
    };
  }

  private static String jokerless(GameRecord.Win win) {
    return win.jokerless() ? ", doubled because it has no jokers" : "";
  }

  private String jokers(GameRecord.Win win) {
    int jokers = table.jokers(win.seat());
    return switch (jokers) {
      case 0 -> "without jokers";
      case 1 -> "with a joker";
      default -> "with " + Sentences.number(jokers) + " jokers";
    };
  }
}
