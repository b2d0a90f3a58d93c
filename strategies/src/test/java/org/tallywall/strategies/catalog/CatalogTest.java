package org.tallywall.strategies.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.strategies.player.RandomLegalPlayer;
import org.tallywall.strategies.setting.Setting;

/** The list of players, and how a study names one. */
class CatalogTest {
  private final Catalog catalog = Catalog.standard();
  private final Faults faults = new Faults();

  private PlayerSpec read(String json) {
    return catalog.read(LocatedJson.read(json, faults), faults);
  }

  private String fault() {
    assertThat(faults.faults()).hasSize(1);
    return faults.faults().get(0).message();
  }

  @Test
  void standard_beginsWithTheYardstickAndTellsEachPlayerInALine() {
    assertThat(catalog.types().get(0).id()).isEqualTo("random-legal");
    assertThat(catalog.type("nearest")).isPresent();
    assertThat(catalog.types())
        .allSatisfy(type -> assertThat(type.description()).isNotBlank().doesNotContain("\n"));
  }

  @Test
  void settings_haveNamesOfTheirOwnAndDefaultsInTheirRange() {
    for (PlayerType type : catalog.types()) {
      assertThat(type.settings()).extracting(Setting::name).doesNotHaveDuplicates();
      for (Setting<?> setting : type.settings()) {
        assertThat(setting.allows(setting.standard())).as(setting.name()).isTrue();
        assertThat(setting.meaning()).as(setting.name()).isNotBlank();
        assertThat(setting.range()).as(setting.name()).isNotBlank();
      }
    }
  }

  @Test
  void name_makesTheEmptySettings() {
    PlayerSpec spec = read("\"nearest\"");
    assertThat(faults.any()).isFalse();
    assertThat(spec.type().id()).isEqualTo("nearest");
    assertThat(spec.changed()).isEmpty();
    assertThat(spec.written()).isEqualTo("nearest");
  }

  @Test
  void objectWithoutSettings_isThePlayer() {
    assertThat(read("{\"player\": \"nearest\"}").written()).isEqualTo("nearest");
    assertThat(faults.any()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"neerest\"", "{\"player\": \"neerest\"}"})
  void unknownPlayer_isNamedWithTheNearestAndAll(String json) {
    assertThat(read(json)).isNull();
    assertThat(fault())
        .contains("unknown player \"neerest\"")
        .contains("did you mean \"nearest\"?")
        .contains("random-legal, newcomer, social, nearest");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "7                           | a player is a name in quotes or an object in braces",
        "[\"nearest\"]               | a player is a name in quotes or an object in braces",
        "true                        | a player is a name in quotes or an object in braces",
        "{}                          | the object has no \"player\"",
        "{\"player\": 3}             | the object has no \"player\"",
        "{\"aim.targets\": 3}        | the object has no \"player\"",
      })
  void valueThatIsNoPlayer_isRefused(String json, String said) {
    assertThat(read(json)).isNull();
    assertThat(fault()).contains(said);
  }

  @Test
  void settingOfAPlayerWithout_isRefused() {
    assertThat(read("{\"player\": \"nearest\", \"haste\": 1}")).isNull();
    assertThat(fault()).contains("no setting \"haste\"").contains("it has no settings");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"aim.target\": 3           | no setting \"aim.target\"; did you mean \"aim.targets\"?",
        "\"aim\": {\"target\": 3}    | no setting \"aim.target\"; did you mean \"aim.targets\"?",
        "\"aims\": {\"targets\": 3}  | no setting \"aims\"",
        "\"aim\": 3                  | no setting \"aim\"",
        "\"aim.targets\": 0          | \"aim.targets\" is a whole number from 1 to 4, not 0",
        "\"aim.targets\": 5          | \"aim.targets\" is a whole number from 1 to 4, not 5",
        "\"aim.targets\": 1.5        | \"aim.targets\" is a whole number from 1 to 4, not 1.5",
        "\"aim.targets\": \"two\"    | \"aim.targets\" is a whole number from 1 to 4, not two",
        "\"aim.targets\": true       | \"aim.targets\" is a whole number from 1 to 4, not",
        "\"aim.targets\": null       | \"aim.targets\" is a whole number from 1 to 4, not",
        "\"aim.targets\": [2]        | \"aim.targets\" is a whole number from 1 to 4, not",
        "\"aim.haste\": 1.01         | \"aim.haste\" is a number from 0.1 to 1.0, not 1.01",
        "\"passes.keep-pairs\": 1    | \"passes.keep-pairs\" is true or false, not 1",
      })
  void wrongSetting_isRefusedWithWhatMayStandThere(String setting, String said) {
    assertThat(read("{\"player\": \"reckoner\", " + setting + "}")).isNull();
    assertThat(fault()).contains(said);
  }

  @Test
  void everyWrongSetting_isToldAtOnce() {
    assertThat(read("{\"player\": \"reckoner\", \"a\": 1, \"aim\": {\"b\": 2, \"targets\": 9}}"))
        .isNull();
    assertThat(faults.faults()).hasSize(3);
  }

  @Test
  void settings_mayStandAloneOrInGroups() {
    PlayerSpec alone = read("{\"player\": \"reckoner\", \"aim.targets\": 2, \"aim.haste\": 0.25}");
    PlayerSpec grouped =
        read("{\"player\": \"reckoner\", \"aim\": {\"targets\": 2, \"haste\": 0.25}}");
    assertThat(faults.any()).isFalse();
    assertThat(grouped.changed()).isEqualTo(alone.changed());
    assertThat(alone.changed())
        .isEqualTo(Map.of("aim.targets", new BigDecimal("2"), "aim.haste", new BigDecimal("0.25")));
  }

  @Test
  void settingOfAStep_turnsTheStepOn() {
    PlayerSpec spec =
        read("{\"player\": \"reckoner\", \"defense\": {\"hold-back\": {\"away-at-least\": 4}}}");
    assertThat(faults.any()).isFalse();
    assertThat(spec.changed()).containsEntry("defense.hold-back", true);
    assertThat(read("{\"player\": \"reckoner\", \"defense.hold-back.away-at-least\": 4}").changed())
        .isEqualTo(spec.changed());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"aim.targets\": 2, \"aim\": {\"targets\": 3}",
        "\"aim\": {\"targets\": 3}, \"aim.targets\": 2",
      })
  void settingWrittenInTwoWays_isRefused(String settings) {
    assertThat(read("{\"player\": \"reckoner\", " + settings + "}")).isNull();
    assertThat(fault()).contains("twice");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"defense.careful\": false, \"defense\": {\"careful\": {\"below-wall\": 40}}",
        "\"defense\": {\"careful\": {\"below-wall\": 40}}, \"defense.careful\": false",
        "\"defense.careful\": false, \"defense.careful.below-wall\": 40",
        "\"defense.careful.below-wall\": 40, \"defense.careful\": false",
      })
  void stepTurnedOffByName_staysOff(String settings) {
    PlayerSpec spec = read("{\"player\": \"watchful\", " + settings + "}");
    assertThat(faults.any()).isFalse();
    assertThat(spec.changed())
        .isEqualTo(
            Map.of("defense.careful", false, "defense.careful.below-wall", new BigDecimal("40")));
  }

  /** Records and their check must not depend on how a study writes its players. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"aim\": {\"targets\": 2}, \"defense\": {\"hold-back\": {\"away-at-least\": 4},"
            + " \"careful\": false}",
        "\"defense.hold-back.away-at-least\": 4.0, \"aim.targets\": 2, \"defense.careful\": false,"
            + " \"defense.hold-back\": true, \"aim.haste\": USUAL0",
      })
  void written_isTheSameHoweverAStudyWroteIt(String settings) {
    Object usual =
        catalog.type("watchful").orElseThrow().settings().stream()
            .filter(setting -> setting.name().equals("aim.haste"))
            .findFirst()
            .orElseThrow()
            .standard();
    String json = settings.replace("USUAL", usual.toString());
    PlayerSpec spec = read("{\"player\": \"watchful\", " + json + "}");
    assertThat(spec.written())
        .isEqualTo(
            Map.of(
                "player",
                "watchful",
                "aim.targets",
                new BigDecimal("2"),
                "defense.hold-back.away-at-least",
                new BigDecimal("4"),
                "defense.careful",
                false));
  }

  @Test
  void written_stepThatIsOff_isReadBackAsOff() {
    PlayerSpec spec =
        read(
            "{\"player\": \"reckoner\", \"defense.careful\": false,"
                + " \"defense.careful.below-wall\": 40}");
    assertThat(spec.written())
        .isEqualTo(
            Map.of(
                "player",
                "reckoner",
                "defense.careful",
                false,
                "defense.careful.below-wall",
                new BigDecimal("40")));
  }

  @Test
  void changedSetting_isCheckedAtOnce() {
    PlayerSpec spec = read("\"reckoner\"");
    PlayerSpec changed = spec.with("aim.targets", new BigDecimal("2"));
    assertThat(changed.changed()).isEqualTo(Map.of("aim.targets", new BigDecimal("2")));
    assertThat(spec.changed()).isEmpty();
    assertThatThrownBy(() -> spec.with("aim.targets", new BigDecimal("9")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("from 1 to 4");
    assertThatThrownBy(() -> spec.with("aim.aim", true))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no setting aim.aim");
  }

  @Test
  void twoPlayersOfOneName_areRefused() {
    PlayerType type = new PlayerType("twin", "one", List.of(), RandomLegalPlayer::new);
    PlayerType other = new PlayerType("twin", "other", List.of(), RandomLegalPlayer::new);
    assertThatThrownBy(() -> new Catalog(List.of(type, other)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("two players are called twin");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Nearest", "2fast", "a b", "a_b"})
  void idWithOtherSigns_isRefused(String id) {
    assertThatThrownBy(() -> new PlayerType(id, "one", List.of(), RandomLegalPlayer::new))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void make_givesANewPlayerEachTime() {
    for (PlayerType type : catalog.types()) {
      PlayerSpec spec = new PlayerSpec(type, Map.of());
      assertThat(spec.make()).isNotSameAs(spec.make());
      assertThat(type.maker().get()).isNotSameAs(type.maker().get());
    }
  }
}
