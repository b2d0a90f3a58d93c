package org.tallywall.experiments.review;

import java.util.List;
import java.util.Map;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Players whose choices a review looks at besides the asked player's own. */
public final class Advisers {
  private static final List<String> USUAL =
      List.of("watchful", "reckoner", "bold", "cautious", "nearest");

  private Advisers() {}

  /**
   * The usual ones.
   *
   * @return players of the catalog with their usual settings
   */
  public static List<Seated> usual() {
    Catalog catalog = Catalog.standard();
    return USUAL.stream().map(id -> Seated.of(new PlayerSpec(catalog.find(id), Map.of()))).toList();
  }
}
