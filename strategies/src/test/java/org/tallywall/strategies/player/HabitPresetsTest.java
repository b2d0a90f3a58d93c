package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.tallywall.strategies.habit.Manners;
import org.tallywall.strategies.setting.Preset;
import org.tallywall.strategies.setting.Setting;

/** What each way of playing sets otherwise than the one it is told by, setting by setting. */
class HabitPresetsTest {
  private static Map<String, String> differences(List<Setting<?>> of, List<Setting<?>> from) {
    assertThat(of).extracting(Setting::name).isEqualTo(from.stream().map(Setting::name).toList());
    Map<String, String> differences = new TreeMap<>();
    for (int at = 0; at < of.size(); at++) {
      if (!of.get(at).standard().equals(from.get(at).standard())) {
        differences.put(of.get(at).name(), of.get(at).standard().toString());
      }
    }
    return differences;
  }

  @Test
  void watchful_isAReckonerThatDefends() {
    assertThat(differences(HabitPlayer.watchful(), HabitPlayer.reckoner()))
        .isEqualTo(
            Map.of(
                "discards.risk-weight", "0.6",
                "defense.careful", "true",
                "defense.hold-back", "true",
                "defense.hold-back.her-tiles", "weigh",
                "defense.to-the-wall", "true",
                "defense.to-the-wall.away-at-least", "6",
                "defense.to-the-wall.draws-per-missing-tile", "0",
                "defense.last-wall", "12"));
  }

  @Test
  void bold_isWatchfulAndGivesUpLate() {
    assertThat(differences(HabitPlayer.bold(), HabitPlayer.watchful()))
        .isEqualTo(
            Map.of(
                "defense.careful.away-at-least", "5",
                "defense.hold-back.exposures-on-one-rack", "3",
                "defense.hold-back.away-at-least", "4",
                "defense.to-the-wall.exposures-on-one-rack", "4"));
  }

  @Test
  void cautious_isWatchfulAndGivesUpEarly() {
    assertThat(differences(HabitPlayer.cautious(), HabitPlayer.watchful()))
        .isEqualTo(
            Map.of(
                "defense.careful.away-at-least", "2",
                "defense.hold-back.away-at-least", "2",
                "defense.hold-back.risk-weight", "3",
                "defense.to-the-wall.away-at-least", "4",
                "defense.to-the-wall.draws-per-missing-tile", "1",
                "defense.last-wall", "16"));
  }

  @Test
  void sharp_isWatchfulAndReadsAll() {
    assertThat(differences(HabitPlayer.sharp(), HabitPlayer.watchful()))
        .isEqualTo(
            Map.of(
                "read.tells", "true",
                "discards.hopes-by", "rack",
                "defense.last-wall.her-tiles", "weigh",
                "wins.dearer-by-exchange", "true"));
  }

  @Test
  void social_knowsLittleClaimsAtOnceAndMissesThings() {
    assertThat(differences(HabitPlayer.social(), HabitPlayer.reckoner()))
        .isEqualTo(
            Map.of(
                "aim.targets", "1",
                "aim.families-known", "2",
                "claims.gain-at-least", "0.8",
                "claims.jokers-when-away-at-most", "14",
                "overlooks.exchange", "0.4",
                "overlooks.call", "0.35"));
  }

  @Test
  void steady_isSoundAndPlain() {
    assertThat(differences(HabitPlayer.steady(), HabitPlayer.reckoner()))
        .isEqualTo(
            Map.of(
                "aim.targets", "2",
                "defense.careful", "true",
                "defense.hold-back", "true",
                "defense.hold-back.exposures-on-one-rack", "3",
                "defense.last-wall", "12",
                "read.passes", "false",
                "overlooks.exchange", "0.05",
                "overlooks.call", "0.05"));
  }

  @Test
  void manners_areTheSameForEveryPlayer() {
    Map<String, String> manners =
        Map.ofEntries(
            Map.entry("passes.keep-flowers", "true"),
            Map.entry("passes.no-pair-to-one", "true"),
            Map.entry("passes.no-honors-together", "true"),
            Map.entry("passes.polite-within", "0.02"),
            Map.entry("passes.blind-when-away-at-most", "5"),
            Map.entry("passes.stop-when-strangers-at-most", "3"),
            Map.entry("passes.courtesy-at-most", "1"),
            Map.entry("claims.when-away-at-most", "5"),
            Map.entry("claims.nearer-at-least", "1"),
            Map.entry("claims.no-second-joker-beside-one", "true"),
            Map.entry("discards.colder-within", "0.02"));
    for (List<Setting<?>> player : List.of(HabitPlayer.reckoner(), HabitPlayer.watchful())) {
      assertThat(differences(Manners.of(Preset.of(player)).settings(), player)).isEqualTo(manners);
    }
  }
}
