package org.tallywall.experiments.reading;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.story.LineNames;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.reports.words.Listed;

/** What an opponent may hold, in words. */
final class OpponentWords {
  /** Lines and tiles that a sentence names. */
  private static final int NAMED = 3;

  /** From this chance on a line is named beside the likeliest. */
  private static final double WORTH_NAMING = 0.05;

  private final SeatView view;
  private final SeatNames seats;

  /**
   * The words in one position.
   *
   * @param view what the seat knows that looks
   * @param seats what the seats are called
   */
  OpponentWords(SeatView view, SeatNames seats) {
    this.view = view;
    this.seats = seats;
  }

  /** A line's name. */
  String line(int line) {
    return LineNames.of(view.table().hands().line(line));
  }

  /** What she shows, and what that leaves her; words that follow her name. */
  String shows(OpponentReading one) {
    List<Exposure> shown = view.exposures(one.seat());
    if (shown.isEmpty()) {
      return "shows nothing";
    }
    String groups = Listed.and(shown.stream().map(Exposure::toString).toList());
    int all = view.table().hands().lines();
    return "shows "
        + groups
        + switch (one.linesLeft()) {
          case 0 -> ", which leaves her no line that can still be made";
          case 1 -> ", which leaves her one line of " + all + ", " + line(left(one));
          default -> ", which leaves her " + one.linesLeft() + " lines of " + all;
        };
  }

  /** The one line left to her. */
  private int left(OpponentReading one) {
    return one.lines().isEmpty() ? view.reach(one.seat()).line(0) : one.lines().get(0).line();
  }

  /** How far away she seems; words that follow her name. */
  String away(OpponentReading one) {
    double first = one.within(1) / (double) one.guesses();
    double second = one.within(2) / (double) one.guesses();
    return "is one tile away "
        + In100.guesses(first)
        + (second < 1 && In100.number(first).equals(In100.number(second))
            ? ""
            : ", two or fewer " + In100.guesses(second));
  }

  /** The sentences of her section. */
  String all(OpponentReading one) {
    StringBuilder text = new StringBuilder(upper(seats.of(one.seat())));
    text.append(' ').append(shows(one)).append(". ");
    if (one.lines().isEmpty()) {
      return text.append("There is nothing that she could still make.").toString();
    }
    text.append("She ").append(away(one)).append('.');
    if (one.linesLeft() > 1) {
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
