package org.tallywall.reports.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.WinRateColumns;

/** Who played, in one line, for a chart that stands alone. */
public final class Who {
  private static final int SPELLED = 6;

  private Who() {}

  /**
   * Who was compared, or who sat at the table.
   *
   * @param results what a results folder holds
   * @return a sentence or two; empty where the folder does not say
   */
  public static String compared(Results results) {
    if (Ways.oneTable(results)) {
      return table(Ways.rows(results));
    }
    String others = player(results.study().all().get("others")).map(Who::beside).orElse("");
    for (String design : List.of("branch", "sweep")) {
      Optional<String> player = player(results.study().object(design).get("player"));
      if (player.isPresent()) {
        return "Player: " + player.get() + others + ".";
      }
    }
    List<String> ways =
        results.rows(WinRateColumns.FILE).stream()
            .map(row -> row.text(WinRateColumns.ARM))
            .distinct()
            .toList();
    return ways.isEmpty() ? "" : "Compared: " + listed(ways) + others + ".";
  }

  private static String table(List<CsvFile.Row> seats) {
    List<String> players = seats.stream().map(row -> row.text(WinRateColumns.PLAYER)).toList();
    if (players.isEmpty()) {
      return "";
    }
    return players.stream().distinct().count() == 1
        ? "All four players: " + players.get(0) + "."
        : "Players, from East: " + String.join(", ", players) + ".";
  }

  private static String beside(String player) {
    return ", seated with three " + Wording.quoted(player) + " players";
  }

  private static String listed(List<String> ways) {
    List<String> names = new ArrayList<>();
    ways.stream().limit(SPELLED).forEach(way -> names.add(Wording.quoted(way)));
    if (ways.size() > SPELLED) {
      names.add(ways.size() - SPELLED + " more");
    }
    return Listed.and(names);
  }

  private static Optional<String> player(Object player) {
    Object name = player instanceof Map<?, ?> fields ? fields.get("player") : player;
    return name instanceof String text && !text.isBlank() ? Optional.of(text) : Optional.empty();
  }
}
