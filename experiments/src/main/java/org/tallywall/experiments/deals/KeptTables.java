package org.tallywall.experiments.deals;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * The tables used last. A round-robin of many players sits at thousands of tables, and those who
 * play the rest of a game out bring tables of their own; what was not used for long is laid anew
 * when it is wanted, and plays the same.
 */
final class KeptTables {
  private static final int MOST = 32;

  private final Map<String, Tables.Table> kept = new LinkedHashMap<>(2 * MOST, 0.75f, true);

  /**
   * A table, the one used before if it is still kept.
   *
   * @param key tells tables apart
   * @param lay lays a new one
   * @return the table
   */
  Tables.Table table(String key, Supplier<Tables.Table> lay) {
    Tables.Table table = kept.get(key);
    if (table == null) {
      table = lay.get();
      kept.put(key, table);
      if (kept.size() > MOST) {
        kept.remove(kept.keySet().iterator().next());
      }
    }
    return table;
  }
}
