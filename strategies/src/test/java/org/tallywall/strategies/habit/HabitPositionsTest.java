package org.tallywall.strategies.habit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.setting.Setting;

/**
 * Every setting of every player does what it says: it changes the choice in one position and leaves
 * it in another that differs little. A setting without its two positions is found here.
 */
class HabitPositionsTest {
  private static final List<String> FILES =
      List.of(
          "aim.txt",
          "passes.txt",
          "claims.txt",
          "jokers.txt",
          "lapses.txt",
          "defense.txt",
          "rollout.txt");

  static List<HabitPosition> positions() {
    return HabitPosition.read(FILES);
  }

  @ParameterizedTest
  @MethodSource("positions")
  void setting_changesTheChoiceWhereItBelongs(HabitPosition position) {
    assertThat(position.choice(position.changes(), false)).isEqualTo(position.without());
    assertThat(position.choice(position.changes(), true)).isEqualTo(position.with());
    assertThat(position.with()).isNotEqualTo(position.without());
  }

  @ParameterizedTest
  @MethodSource("positions")
  void setting_leavesTheChoiceElsewhere(HabitPosition position) {
    assertThat(position.choice(position.keeps(), false)).isEqualTo(position.kept());
    assertThat(position.choice(position.keeps(), true)).isEqualTo(position.kept());
  }

  /** Of settings that tell what no sheet shows, {@code KnowingPlayerTest} has what they do. */
  @Test
  void everySettingOfEveryPlayer_hasItsPositions() {
    Set<String> has =
        positions().stream()
            .map(HabitPosition::setting)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> missing = new TreeSet<>();
    Set<String> all = new TreeSet<>();
    for (PlayerType type : Catalog.standard().types()) {
      for (Setting<?> setting : type.settings()) {
        all.add(setting.name());
        if (!has.contains(setting.name()) && !KnowsHabit.settings().contains(setting)) {
          missing.add(setting.name());
        }
      }
    }
    assertThat(missing).as("to be shown in src/test/resources/positions").isEmpty();
    assertThat(all).containsAll(has);
  }

  @Test
  void everyWordOfASetting_hasItsPositions() {
    List<String> has =
        positions().stream().map(at -> at.setting() + " " + at.value().replace("\"", "")).toList();
    List<String> missing = new ArrayList<>();
    for (PlayerType type : Catalog.standard().types()) {
      for (Setting<?> setting : type.settings()) {
        for (String word : setting.words()) {
          if (!word.equals(setting.standard()) && !has.contains(setting.name() + " " + word)) {
            missing.add(setting.name() + " " + word);
          }
        }
      }
    }
    assertThat(missing).as("to be shown in src/test/resources/positions").isEmpty();
  }
}
