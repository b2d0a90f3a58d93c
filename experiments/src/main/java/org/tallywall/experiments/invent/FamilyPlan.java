package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.List;

/**
 * A family of an invented card.
 *
 * @param name its name on the card
 * @param sketcher what draws its lines
 * @param full its share of a full card, as a weight
 * @param beginners its share of a card for beginners, as a weight; 0 where it has none
 */
record FamilyPlan(String name, Sketcher sketcher, int full, int beginners) {
  static final List<FamilyPlan> ALL =
      List.of(
          new FamilyPlan("Ladders", new StepSketcher("ladder", 1), 7, 3),
          new FamilyPlan("Skips", new StepSketcher("skip", 2), 6, 2),
          new FamilyPlan("Tens", new TenSketcher(), 5, 0),
          new FamilyPlan("Echoes", new EchoSketcher(), 5, 2),
          new FamilyPlan("Corners", new SetSketcher("corner", List.of("1", "9")), 4, 1),
          new FamilyPlan("Middles", new SetSketcher("middle", List.of("4", "5", "6")), 4, 1),
          new FamilyPlan(
              "Vanes",
              new HonorSketcher("vane", List.of("N", "E", "W", "S"), List.of("u", "v")),
              5,
              1),
          new FamilyPlan(
              "Hearths",
              new HonorSketcher("hearth", List.of("R", "G", "0"), List.of("Dx", "Dy")),
              5,
              1),
          new FamilyPlan("Gardens", new GardenSketcher(), 4, 1),
          new FamilyPlan("Towers", new TowerSketcher(), 5, 0),
          new FamilyPlan("Couples", new CoupleSketcher(), 5, 1));

  static final String COUPLES = "Couples";

  int weight(Level level) {
    return level == Level.FULL ? full : beginners;
  }

  /**
   * Deals lines out to the families by their weights (largest remainders; the earlier family first
   * among equals), at least one to each.
   *
   * @param lines lines in all, at least as many as families
   * @param level for whom
   * @return a number for each of {@link #ALL}
   */
  static List<Integer> shares(int lines, Level level) {
    int weights = ALL.stream().mapToInt(family -> family.weight(level)).sum();
    List<Integer> shares = new ArrayList<>();
    int given = 0;
    for (FamilyPlan family : ALL) {
      int share =
          family.weight(level) == 0 ? 0 : Math.max(1, lines * family.weight(level) / weights);
      shares.add(share);
      given += share;
    }
    while (given < lines) {
      int neediest = 0;
      for (int at = 1; at < shares.size(); at++) {
        int lack = lines * ALL.get(at).weight(level) - shares.get(at) * weights;
        int most = lines * ALL.get(neediest).weight(level) - shares.get(neediest) * weights;
        neediest = lack > most ? at : neediest;
      }
      shares.set(neediest, shares.get(neediest) + 1);
      given++;
    }
    return shares;
  }
}
