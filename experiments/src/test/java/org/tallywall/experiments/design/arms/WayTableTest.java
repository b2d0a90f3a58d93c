package org.tallywall.experiments.design.arms;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Design;
import org.tallywall.reports.schema.WayColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.setting.Setting;

/** In what ways of playing differ, row by row. */
class WayTableTest {
  private static PlayerSpec player(String id, Map<String, Object> changed) {
    return new PlayerSpec(Catalog.standard().find(id), changed);
  }

  private static Table table(PlayerSpec baseline, PlayerSpec... others) {
    List<Arm> arms = new ArrayList<>();
    for (PlayerSpec other : others) {
      arms.add(new Arm("way " + arms.size(), other));
    }
    arms.add(new Arm("the baseline", baseline));
    return WayTable.of(new ArmsDesign(arms, others.length, baseline, Design.ROTATE, Streams.SAME));
  }

  private static List<String> cells(Table table, Column column) {
    int at = table.columns().indexOf(column);
    return table.rows().stream().map(row -> text(row.get(at))).toList();
  }

  private static String text(Cell cell) {
    return cell instanceof Cell.Text words
        ? words.value()
        : cell instanceof Cell.Whole whole ? Long.toString(whole.value()) : "";
  }

  @Test
  void changedSettings_haveARowEach_withBothValuesInWords() {
    Table table =
        table(
            player("reckoner", Map.of()),
            player("reckoner", Map.of("claims.jokers-shown-at-most", BigDecimal.ONE)),
            player("reckoner", Map.of("passes.keep-pairs", true)));

    assertThat(cells(table, WayColumns.ARM)).containsExactly("way 0", "way 1");
    assertThat(cells(table, WayColumns.BASELINE)).containsOnly("the baseline");
    assertThat(cells(table, WayColumns.SETTING))
        .containsExactly("claims.jokers-shown-at-most", "passes.keep-pairs");
    assertThat(cells(table, WayColumns.VALUE)).containsExactly("1", "true");
    assertThat(cells(table, WayColumns.BASELINE_VALUE)).containsExactly("5", "false");
    assertThat(cells(table, WayColumns.WORDS))
        .containsExactly(
            "shows at most 1 joker in one exposure",
            "breaks up no pair in the passes while it has another tile to pass");
    assertThat(cells(table, WayColumns.BASELINE_WORDS).get(0))
        .isEqualTo("shows at most 5 jokers in one exposure");
    assertThat(cells(table, WayColumns.SETTINGS)).containsOnly("1");
  }

  /** The usual value written out is no difference, and 5.0 is 5. */
  @Test
  void valuesThatAreTheSame_haveNoRow() {
    Table table =
        table(
            player("reckoner", Map.of()),
            player("reckoner", Map.of("claims.jokers-shown-at-most", new BigDecimal("5.0"))));

    assertThat(table.rows()).isEmpty();
  }

  /** How a habit is set says nothing of a player that has it off. */
  @Test
  void settingOfAHabitThatIsOff_hasNoWords() {
    Table table =
        table(
            player("reckoner", Map.of()),
            player(
                "reckoner",
                Map.of(
                    "defense.hold-back",
                    true,
                    "defense.hold-back.away-at-least",
                    new BigDecimal(4))));

    assertThat(cells(table, WayColumns.LABEL))
        .containsExactly(
            "keeps the tiles that an opponent with enough exposures can use",
            "holds back when at least 4 tiles away");
    assertThat(cells(table, WayColumns.BASELINE_WORDS).get(0)).startsWith("does not do this (");
    assertThat(cells(table, WayColumns.BASELINE_WORDS).get(1)).isEmpty();
    assertThat(cells(table, WayColumns.WORDS)).doesNotContain("");
  }

  /** Counted once more: all settings of the two kinds by their names. */
  @Test
  void anotherPlayer_isDescribedFirst_andEverySettingThatBothHaveIsCompared() {
    PlayerSpec reckoner = player("reckoner", Map.of());
    PlayerSpec watchful = player("watchful", Map.of());
    Table table = table(reckoner, watchful);
    long differing =
        watchful.type().settings().stream()
            .filter(setting -> differs(reckoner.type(), setting))
            .count();

    assertThat(cells(table, WayColumns.SETTING).get(0)).isEmpty();
    assertThat(cells(table, WayColumns.VALUE).get(0)).isEqualTo("watchful");
    assertThat(cells(table, WayColumns.WORDS).get(0)).isEqualTo(watchful.type().description());
    assertThat(table.rows()).hasSize((int) differing + 1);
    assertThat(cells(table, WayColumns.SETTINGS)).containsOnly(Long.toString(differing));
    assertThat(differing).isGreaterThan(4);
  }

  private static boolean differs(PlayerType type, Setting<?> setting) {
    return type.settings().stream()
        .filter(one -> one.name().equals(setting.name()))
        .anyMatch(one -> !one.standard().toString().equals(setting.standard().toString()));
  }

  @Test
  void playerWithoutSettings_isDescribedAlone() {
    Table table = table(player("reckoner", Map.of()), player("nearest", Map.of()));

    assertThat(table.rows()).hasSize(1);
    assertThat(cells(table, WayColumns.SETTINGS)).containsExactly("0");
  }
}
