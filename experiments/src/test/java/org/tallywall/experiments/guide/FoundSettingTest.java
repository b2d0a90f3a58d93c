package org.tallywall.experiments.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.Player;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.setting.Setting;

/** Settings are found by words in their names and meanings, whoever has them. */
class FoundSettingTest {
  private static PlayerType player(String id, Setting<?>... settings) {
    return new PlayerType(id, "plays", List.of(settings), values -> (Player) null);
  }

  private static Setting<Integer> pairs(int usual) {
    return Setting.whole("aim.pairs").from(0).to(9).usual(usual).says("likes couples");
  }

  private final List<PlayerType> players =
      List.of(
          player("shy", pairs(2)),
          player("brave", pairs(5), Setting.onOff("claims.late").usual(true).says("waits")));

  @Test
  void setting_ofSeveralPlayers_isFoundOnceWithAllOfThem() {
    List<FoundSetting> found = FoundSetting.find("PAIR", players);

    assertThat(found).hasSize(1);
    assertThat(found.get(0).players()).isEqualTo(players);
    assertThat(found.get(0).usual()).isEqualTo("2; brave: 5");
  }

  @Test
  void setting_wordOfItsMeaning_isFound() {
    assertThat(FoundSetting.find("couples", players)).hasSize(1);
    assertThat(FoundSetting.find("aim couples", players)).hasSize(1);
    assertThat(FoundSetting.find("claims couples", players)).isEmpty();
  }

  @Test
  void groups_holdEverySettingOnce() {
    for (PlayerType type : Catalog.standard().types()) {
      List<Setting<?>> grouped =
          SettingGroup.of(type.settings()).stream()
              .<Setting<?>>flatMap(group -> group.settings().stream())
              .toList();
      assertThat(grouped).containsExactlyInAnyOrderElementsOf(type.settings());
      assertThat(SettingGroup.of(type.settings()))
          .allSatisfy(group -> assertThat(group.about()).as(group.name()).isNotEmpty());
    }
  }

  @Test
  void below_takesWholeWordsOfNames() {
    List<Setting<?>> settings =
        List.of(
            Setting.onOff("a.b").usual(true).says("x"),
            Setting.onOff("a.b.c").usual(true).says("y"),
            Setting.onOff("a.bc").usual(true).says("z"));

    assertThat(SettingGroup.below(settings, "a.b")).isEqualTo(settings.subList(0, 2));
    assertThat(SettingGroup.prefixes(settings)).containsExactly("a", "a.b", "a.b.c", "a.bc");
  }

  @Test
  void usual_number_standsAsItIsWritten() {
    assertThat(FoundSetting.usual(pairs(3))).isEqualTo(new BigDecimal(3).toString());
  }
}
