package org.tallywall.experiments.design.arms;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.study.Arm;
import org.tallywall.reports.schema.WayColumns;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.setting.Saying;
import org.tallywall.strategies.setting.Setting;

/**
 * In what the ways of playing differ from the one that they are compared with, in words made from
 * the sayings of the settings. Only settings that both players have are compared.
 */
final class WayTable {
  private final Arm baseline;
  private final TableBuilder table =
      Table.builder(WayColumns.FILE, "In what the ways of playing differ")
          .columns(WayColumns.all());

  private WayTable(Arm baseline) {
    this.baseline = baseline;
  }

  static Table of(ArmsDesign ways) {
    WayTable table = new WayTable(ways.arms().get(ways.baseline()));
    ways.arms().stream().filter(arm -> arm != table.baseline).forEach(table::add);
    return table.table.build();
  }

  private void add(Arm arm) {
    PlayerSpec player = arm.player();
    List<? extends Setting<?>> differing =
        player.type().settings().stream().filter(setting -> differs(player, setting)).toList();
    if (!player.type().id().equals(baseline.player().type().id())) {
      table.row(kind(arm, differing.size()));
    }
    differing.forEach(setting -> table.row(setting(arm, setting, differing.size())));
  }

  private boolean differs(PlayerSpec player, Setting<?> setting) {
    return own(baseline.player(), setting)
        .map(there -> baseline.player().value(there))
        .filter(there -> !Setting.same(player.value(setting), there))
        .isPresent();
  }

  /** The setting of that name with the player's own usual value. */
  private static Optional<Setting<?>> own(PlayerSpec player, Setting<?> setting) {
    return player.type().settings().stream()
        .filter(one -> one.name().equals(setting.name()))
        .findFirst();
  }

  private Row kind(Arm arm, int settings) {
    return row(arm, settings)
        .set(WayColumns.VALUE, arm.player().type().id())
        .set(WayColumns.BASELINE_VALUE, baseline.player().type().id())
        .set(WayColumns.WORDS, arm.player().type().description())
        .set(WayColumns.BASELINE_WORDS, baseline.player().type().description());
  }

  private Row setting(Arm arm, Setting<?> setting, int settings) {
    Saying saying = setting.saying();
    Object value = arm.player().value(setting);
    Object there = baseline.player().value(own(baseline.player(), setting).orElseThrow());
    return row(arm, settings)
        .set(WayColumns.SETTING, setting.name())
        .set(WayColumns.VALUE, text(value))
        .set(WayColumns.BASELINE_VALUE, text(there))
        .set(WayColumns.WORDS, isOff(arm.player(), setting) ? "" : saying.at(value))
        .set(WayColumns.BASELINE_WORDS, isOff(baseline.player(), setting) ? "" : saying.at(there))
        .set(WayColumns.SAYING, saying.words())
        .set(WayColumns.HEADING, saying.inShort())
        .set(WayColumns.LABEL, saying.inShort(value))
        .set(WayColumns.BASELINE_LABEL, saying.inShort(there));
  }

  private Row row(Arm arm, int settings) {
    return new Row()
        .set(WayColumns.ARM, arm.name())
        .set(WayColumns.PLAYER, arm.player().type().id())
        .set(WayColumns.BASELINE, baseline.name())
        .set(WayColumns.SETTINGS, settings);
  }

  /** Whether it belongs to a habit that is off, so that its value does nothing. */
  private static boolean isOff(PlayerSpec player, Setting<?> setting) {
    return player.type().settings().stream()
        .filter(habit -> setting.name().startsWith(habit.name() + "."))
        .anyMatch(habit -> Boolean.FALSE.equals(player.value(habit)));
  }

  private static String text(Object value) {
    return value instanceof BigDecimal number
        ? Setting.plain(number).toPlainString()
        : String.valueOf(value);
  }
}
