package org.tallywall.reports.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.words.Shown;
import org.tallywall.reports.words.Ways;

/** All charts that a results folder has the figures for. */
public final class Charts {
  private Charts() {}

  /**
   * In the order in which they are looked at: what answers the question comes first.
   *
   * @param results what a results folder holds
   * @return the figures in their order
   */
  public static List<Figure> of(Results results) {
    List<Figure> figures = new ArrayList<>(answers(results));
    PartChart.of(results).ifPresent(figures::add);
    figures.addAll(AimChart.all(results));
    figures.addAll(CourseCharts.of(results));
    return figures;
  }

  private static List<Figure> answers(Results results) {
    List<Figure> figures = new ArrayList<>();
    BranchChart.all(results).forEach(map -> figures.add(map.figure()));
    SweepChart.of(results).ifPresent(figures::add);
    if (figures.isEmpty()) {
      DifferenceChart.of(results).ifPresent(figures::add);
    }
    return figures;
  }

  /**
   * The one chart of the notes: what answers the question; of one fixed table what it is asked.
   *
   * @param results what a results folder holds
   * @return what there is, if there is any
   */
  public static Optional<Figure> first(Results results) {
    List<Figure> all = of(results);
    if (Ways.oneTable(results)) {
      Optional<Figure> shown = named(all, shown(results));
      return shown.isPresent() ? shown : all.stream().findFirst();
    }
    return all.stream().findFirst();
  }

  private static String shown(Results results) {
    return switch (Shown.of(results)) {
      case SEATS -> PartChart.STEM;
      case FAMILIES -> AimChart.FAMILIES;
      case LINES -> AimChart.LINES;
      case ENDINGS -> CourseCharts.ENDINGS;
      case PASSES -> CourseCharts.PASSES;
    };
  }

  private static Optional<Figure> named(List<Figure> figures, String stem) {
    return figures.stream().filter(one -> one.caption().stem().equals(stem)).findFirst();
  }
}
