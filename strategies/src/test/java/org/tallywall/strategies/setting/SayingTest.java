package org.tallywall.strategies.setting;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.strategies.catalog.Catalog;

/** What is said of a player that has a setting at some value. */
class SayingTest {
  private static final Pattern PLACE = Pattern.compile("this many|this much");

  /** Every setting of every player, once. */
  private static Map<String, Setting<?>> all() {
    Map<String, Setting<?>> all = new TreeMap<>();
    Catalog.standard()
        .types()
        .forEach(type -> type.settings().forEach(setting -> all.put(setting.name(), setting)));
    return all;
  }

  private static String at(String setting, Object value) {
    return all().get(setting).saying().at(value);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "claims.jokers-shown-at-most | 2 | shows at most 2 jokers in one exposure",
        "claims.jokers-shown-at-most | 1 | shows at most 1 joker in one exposure",
        "aim.leave-pair-when-out | 1 | gives up on a pair with 1 copy of its tile face up",
        "aim.leave-pair-when-out | 9 | gives up on a pair with 9 copies of its tile face up; 9 never does",
        "discards.risk-weight | 1.0 | counts the points at risk 1 times as much as the points hoped for",
        "discards.risk-weight | 0.60 | counts the points at risk 0.6 times as much as the points hoped for",
        "claims.when-unseen-at-most | 1 | claims a tile only with at most 1 more of its kind unseen",
        "overlooks.win | 0.02 | overlooks a win with a chance of 0.02",
        "passes.stop-when-strangers-at-most | -1 | stops the second round with -1 strangers or fewer; strangers are tiles that fit no hand it has in mind; -1 never stops",
        "passes.stop-when-strangers-at-most | 2 | stops the second round with 2 strangers or fewer; strangers are tiles that fit no hand it has in mind"
      })
  void number_standsWhereItBelongs(String setting, BigDecimal value, String said) {
    assertThat(at(setting, value)).isEqualTo(said);
  }

  @Test
  void onOff_isSaid_orDenied() {
    assertThat(at("passes.keep-pairs", true))
        .isEqualTo("breaks up no pair in the passes while it has another tile to pass");
    assertThat(at("passes.keep-pairs", false))
        .isEqualTo(
            "does not do this (breaks up no pair in the passes while it has another tile to pass)");
  }

  @Test
  void word_isSaidByItsMeaning() {
    assertThat(at("jokers.exchange", "at-once")).isEqualTo("redeems a joker as soon as it can");
    assertThat(at("jokers.exchange", "when-useful"))
        .isEqualTo("redeems a joker if that makes the rack worth no less");
    assertThat(at("defense.hold-back.her-tiles", "keep"))
        .isEqualTo("keeps her tiles whatever that costs");
  }

  @Test
  void name_standsWhereItBelongs() {
    Saying saying = all().get("aim.prefer-family").saying();

    assertThat(saying.at("Skips"))
        .isEqualTo("leans toward the family “Skips”: counts its lines several times as much");
    assertThat(saying.at("")).isEqualTo("leans toward no family");
    assertThat(saying.inShort("One: two; three (this line)"))
        .isEqualTo("leans toward the family “One: two; three (this line)”");
    assertThat(saying.inShort()).isEqualTo("leans toward this family");
    assertThat(at("aim.prefer-by", new BigDecimal(5)))
        .isEqualTo("counts the lines it leans toward 5 times as much when it picks one");
    assertThat(at("aim.prefer-line", "S1"))
        .isEqualTo("leans toward the line “S1”: counts it several times as much");
  }

  @Test
  void inShort_endsBeforeTheFirstExplanation() {
    Saying saying = all().get("defense.hold-back.away-at-least").saying();

    assertThat(saying.inShort()).isEqualTo("holds back when at least this many tiles away");
    assertThat(saying.inShort(new BigDecimal(4)))
        .isEqualTo("holds back when at least 4 tiles away");
    assertThat(all().get("jokers.exchange").saying().inShort()).isEqualTo("redeems a joker");
    assertThat(all().get("jokers.exchange").saying().inShort("never"))
        .isEqualTo("redeems a joker not at all");
  }

  /** The quoted proverb is for lists of settings. */
  @Test
  void everySaying_hasAPlaceForItsNumberOrWords_andDropsTheProverb() {
    for (Setting<?> setting : all().values()) {
      String words = setting.saying().words();
      assertThat(words).as(setting.name()).doesNotContain("\"").isNotBlank();
      Matcher place = PLACE.matcher(words);
      long places = place.results().count();
      assertThat(places).as(setting.name()).isEqualTo(isNumber(setting) ? 1 : 0);
      for (String word : setting.words()) {
        assertThat(words).as(setting.name()).contains(" (" + word + ")");
        assertThat(setting.saying().at(word)).as(setting.name()).doesNotContain("(", ":");
      }
    }
  }

  /** Said after "a player that": a verb in the third person comes, at once or after a condition. */
  @Test
  void everySaying_isSaidOfAPlayer() {
    Pattern told =
        Pattern.compile(
            "(never |counts |is |takes |does )?\\w+s\\b.*"
                + "|(with|without|while|between|among|one away)\\b.*\\b(\\w+s)\\b.*");
    all()
        .values()
        .forEach(setting -> assertThat(setting.saying().words()).as(setting.name()).matches(told));
  }

  private static boolean isNumber(Setting<?> setting) {
    return setting.standard() instanceof BigDecimal;
  }
}
