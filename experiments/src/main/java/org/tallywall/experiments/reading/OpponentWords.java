package org.tallywall.experiments.reading;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.story.LineNames;
import org.tallywall.reports.words.Listed;

/** What an opponent may hold, in words. */
final class OpponentWords {
  /** Lines and tiles that a sentence names. */
  private static final int NAMED = 3;

  /** From this chance on a line is named beside the likeliest. */
  private static final double WORTH_NAMING = 0.05;

  private final SeatView view;

  /**
   * The words in one position.
   *
   * @param view what the seat knows that looks
   */
  OpponentWords(SeatView view) {
    this.view = view;
  }

  /** A line's name. */
  String line(int line) {
    return LineNames.of(view.table().hands().line(line));
  }

  /** What she shows and what that leaves, without the end of the sentence. */
  String shows(OpponentReading one) {
    List<Exposure> shown = view.exposures(one.seat());
    if (shown.isEmpty()) {
      return "she shows nothing";
    }
    int all = view.table().hands().lines();
    String groups = Listed.and(shown.stream().map(Exposure::toString).toList());
    String leave = "her " + groups + (shown.size() == 1 ? " leaves " : " leave ");
    return leave
        + switch (one.linesLeft().size()) {
          case 0 -> "no line that can still be made";
          case 1 -> "one line of " + all + ", " + line(one.linesLeft().get(0));
          default -> one.linesLeft().size() + " lines of " + all;
        };
  }

  /** What the tiles on the rack of the one who looks change about that, or nothing. */
  private String counted(OpponentReading one) {
    int left = one.linesLeft().size();
    if (view.exposures(one.seat()).isEmpty() || left == 0 || one.makeable() >= left) {
      return "";
    }
    String tiles = " With the tiles of this rack counted out, ";
    if (one.makeable() == 0) {
      return tiles
          + (left == 1 ? "it" : "none of them")
          + " can"
          + (left == 1 ? "not" : "")
          + " be made any more, which she cannot see.";
    }
    return tiles + one.makeable() + " of them can still be made.";
  }

  /** How often she is one tile away; words that follow her name. */
  String oneAway(OpponentReading one) {
    return "is one tile away " + In100.guesses(one.within(1) / (double) one.guesses());
  }

  /** How far away she seems; words that follow her name. */
  String away(OpponentReading one) {
    return oneAway(one) + ", two or fewer " + In100.guesses(one.within(2) / (double) one.guesses());
  }

  /** The sentences of her section. */
  String all(OpponentReading one) {
    if (view.dead(one.seat())) {
      return "Her hand was called dead, so she takes no more tiles.";
    }
    StringBuilder text = new StringBuilder(upper(shows(one))).append(". ");
    text.append(counted(one).isEmpty() ? "" : counted(one).strip() + " ");
    if (one.lines().isEmpty()) {
      return text.append("There is nothing that she could still make.").toString();
    }
    text.append("She ").append(away(one)).append('.');
    if (one.linesLeft().size() > 1) {
      text.append(' ').append(likeliest(one)).append('.');
    }
    List<String> needs =
        one.needs().stream()
            .filter(need -> need.nearer() >= WORTH_NAMING * one.guesses())
            .limit(NAMED)
            .map(need -> Tile.symbol(need.kind()))
            .toList();
    if (!needs.isEmpty()) {
      text.append(" The tiles that would most often bring her nearer: ")
          .append(Listed.and(needs))
          .append('.');
    }
    return text.toString();
  }

  private String likeliest(OpponentReading one) {
    List<OpponentReading.LineChance> lines = one.lines();
    if (lines.get(0).chance() < WORTH_NAMING) {
      return "No line stands out";
    }
    List<String> named =
        lines.stream()
            .filter(line -> line.chance() >= WORTH_NAMING)
            .limit(NAMED)
            .map(line -> line(line.line()) + " (" + In100.number(line.chance()) + ")")
            .toList();
    return "Likeliest of 100 guesses: " + Listed.and(named);
  }

  static String upper(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
