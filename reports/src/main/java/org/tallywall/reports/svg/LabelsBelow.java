package org.tallywall.reports.svg;

import java.util.ArrayList;
import java.util.List;

/**
 * Labels below a field, each at its place; where they have no room, only every second, third … one.
 */
final class LabelsBelow {
  private static final double GAP = 16;

  /** From one label of a number to the next, people count in these. */
  private static final List<Integer> ROUND_STEPS = List.of(1, 2, 4, 5, 10, 20, 25, 50, 100);

  private final Sheet sheet;
  private final List<String> labels;
  private final double[] places;

  LabelsBelow(Sheet sheet, List<String> labels, double[] places) {
    this.sheet = sheet;
    this.labels = labels;
    this.places = places;
  }

  /** Writes as many as there is room for and uses up the sheet below them. */
  void draw() {
    int every = 1;
    while (every < places.length && !fits(every)) {
      every++;
    }
    draw(every);
  }

  /** The same with labels that are numbers in a row, a round step apart. */
  void drawNumbers() {
    draw(ROUND_STEPS.stream().filter(this::fits).findFirst().orElse(places.length));
  }

  private void draw(int every) {
    double room = nearest(sheet, places);
    List<Integer> shown = shown(every);
    double width = Math.max(every * room - GAP, longestWord(shown));
    List<List<String>> lines =
        shown.stream().map(i -> Lines.wrap(labels.get(i), width, Face.SMALL)).toList();
    double[] wished = shown.stream().mapToDouble(i -> places[i]).toArray();
    double[] widths = lines.stream().mapToDouble(l -> Sheet.widest(l, Face.SMALL)).toArray();
    double[] middles = Spread.apart(wished, widths, Sheet.MARGIN, sheet.right());
    int most = 1;
    for (int i = 0; i < middles.length; i++) {
      double base = sheet.used() + Face.SMALL.lineHeight();
      for (String line : lines.get(i)) {
        sheet.sketch().text(middles[i], base, Anchor.MIDDLE, Face.SMALL, line);
        base += Face.SMALL.lineHeight();
      }
      most = Math.max(most, lines.get(i).size());
    }
    sheet.use((most + 0.6) * Face.SMALL.lineHeight());
  }

  /** The room between the two places that are nearest to each other. */
  static double nearest(Sheet sheet, double[] places) {
    double nearest = sheet.width();
    for (int i = 1; i < places.length; i++) {
      nearest = Math.min(nearest, places[i] - places[i - 1]);
    }
    return nearest;
  }

  /** Whether every second, third … label keeps its words whole, and all have room side by side. */
  private boolean fits(int every) {
    double width = every * nearest(sheet, places) - GAP;
    List<Integer> shown = shown(every);
    return width >= longestWord(shown)
        && shown.size() * (Math.min(width, widestLabel(shown)) + GAP) <= sheet.width();
  }

  private List<Integer> shown(int every) {
    List<Integer> shown = new ArrayList<>();
    for (int i = 0; i < places.length; i += every) {
      shown.add(i);
    }
    return shown;
  }

  private double widestLabel(List<Integer> shown) {
    return Sheet.widest(shown.stream().map(labels::get).toList(), Face.SMALL);
  }

  private double longestWord(List<Integer> shown) {
    return shown.stream()
        .mapToDouble(i -> Sheet.widest(List.of(labels.get(i).split(" ")), Face.SMALL))
        .max()
        .orElse(0);
  }
}
