package org.tallywall.experiments.design.sweep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.design.arms.ArmsDesign;
import org.tallywall.experiments.design.arms.Comparison;
import org.tallywall.experiments.design.arms.Difference;
import org.tallywall.reports.table.Table;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * One setting at several values, each a way of playing.
 *
 * @param player the player whose setting it is
 * @param setting the setting's full name
 * @param values its values, in the order of the ways of playing
 * @param ways the ways of playing
 */
public record SweepDesign(PlayerSpec player, String setting, List<Object> values, ArmsDesign ways)
    implements Comparison {
  /** The field of a study file that asks for this design. */
  static final String NAME = "sweep";

  /**
   * Copies the values.
   *
   * @param player the player whose setting it is
   * @param setting the setting's full name
   * @param values its values
   * @param ways the ways of playing
   */
  public SweepDesign {
    values = List.copyOf(values);
  }

  @Override
  public List<PlayerSpec> seated() {
    return Stream.concat(Stream.of(player), ways.seated().stream()).toList();
  }

  @Override
  public Map<String, Object> fields(Function<PlayerSpec, Object> writer) {
    Map<String, Object> sweep = new LinkedHashMap<>();
    sweep.put("player", writer.apply(player));
    sweep.put("setting", setting);
    sweep.put("values", values);
    sweep.put("baseline", values.get(ways.baseline()));
    Map<String, Object> written = new LinkedHashMap<>();
    written.put(NAME, sweep);
    written.putAll(ways.common(writer));
    return written;
  }

  /** The setting's last word and its value. */
  @Override
  public String label(String arm) {
    return setting.substring(setting.lastIndexOf('.') + 1) + " " + arm;
  }

  @Override
  public List<Table> tables(StudyAnswer answer) {
    List<Table> tables = new ArrayList<>(Comparison.super.tables(answer));
    List<Difference> differences = Difference.of(answer, ways);
    tables.add(1, SweepTable.of(this, ways(answer.tally()), differences));
    return tables;
  }
}
