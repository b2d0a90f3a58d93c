package org.tallywall.reports.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.figure.SquareMap;
import org.tallywall.reports.words.BranchWords;

/**
 * A map of squares with the choices that it compares.
 *
 * @param figure the map
 * @param words the two choices
 * @param group what else its squares have in common; empty where there is one map
 * @param border the border, if one can be drawn
 */
public record BranchMap(
    SquareMap figure, BranchWords words, String group, Optional<Border> border) {

  /**
   * The rule to remember, or that there is none.
   *
   * @return the words
   */
  public String rule() {
    String where = group.isEmpty() ? "" : " (" + group + ")";
    return border
        .map(line -> "The rule to remember" + where + ": " + rule(line) + ".")
        .orElse("These situations give no rule to remember" + where + ".");
  }

  /** The border in words: up to how many tiles away, for each part of the wall that tells it. */
  private String rule(Border line) {
    String left = BranchWords.plain(line.plusLeft() ? words.first() : words.second());
    String right = BranchWords.plain(line.plusLeft() ? words.second() : words.first());
    List<String> rules = new ArrayList<>();
    List<String> open = new ArrayList<>();
    for (int row = 0; row < line.places().size(); row++) {
      String tiles = figure.down().labels().get(row);
      if (line.places().get(row) == Border.NO_LINE) {
        open.add(tiles);
      } else {
        rules.add("with " + tiles + " tiles left " + side(line.places().get(row), left, right));
      }
    }
    String rest =
        open.isEmpty() ? "" : "; with " + String.join(", ", open) + " tiles left it is not clear";
    return String.join("; ", rules) + rest;
  }

  private String side(int place, String left, String right) {
    List<String> away = figure.across().labels();
    String span = away.get(0) + " to " + away.get(away.size() - 1) + " away";
    if (place == 0 || place == away.size()) {
      return (place == 0 ? right : left) + ", " + span;
    }
    return "%s up to %s away, and %s from %s away on"
        .formatted(left, away.get(place - 1), right, away.get(place));
  }
}
