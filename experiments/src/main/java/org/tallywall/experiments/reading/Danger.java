package org.tallywall.experiments.reading;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.core.tile.Tile;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.figure.PairedDots;
import org.tallywall.reports.figure.Slide;

/** The tiles of a rack by their danger, and the chart of it. */
final class Danger {
  private static final double WHOLE = 100;

  private Danger() {}

  /** The most dangerous first: by what a throw costs, then by how often it is taken. */
  static List<TileReading> first(List<TileReading> tiles) {
    return tiles.stream()
        .sorted(
            Comparator.comparingDouble(TileReading::perThrow)
                .thenComparingDouble(TileReading::win)
                .thenComparingDouble(TileReading::claim)
                .reversed()
                .thenComparingInt(TileReading::kind))
        .toList();
  }

  /**
   * The chart.
   *
   * @param reading what was seen
   * @param source a sentence on where it comes from
   */
  static Figure chart(Reading reading, String source) {
    Slide slide = new Slide("", "", List.of(source));
    Caption caption =
        new Caption(
            "danger",
            "What each tile of this rack would risk if it were thrown now",
            "One row for each tile of the rack, the most dangerous first: how often in 100 guesses it"
                + " gives the game away, how often it is claimed for an exposure, and what it costs"
                + " where it gives the game away. The table says the same in numbers.",
            List.of(),
            slide);
    return new PairedDots(
        caption,
        new Axis("how often", "in 100 guesses"),
        "tile",
        "gives the game away",
        "claimed for an exposure",
        List.of("points it then costs"),
        first(reading.tiles()).stream().map(Danger::row).toList());
  }

  private static PairedDots.Row row(TileReading tile) {
    return new PairedDots.Row(
        Tile.symbol(tile.kind()),
        OptionalDouble.of(WHOLE * tile.win()),
        OptionalDouble.of(WHOLE * tile.claim()),
        List.of(tile.wins() == 0 ? "" : String.valueOf(Math.round(tile.pays()))));
  }
}
