package org.tallywall.core.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every switch is explained: what it decides, what its words stand for, what is usual. */
class RuleMeaningsTest {
  static List<RuleSwitch> switches() {
    return RuleSwitches.all();
  }

  @ParameterizedTest
  @MethodSource("switches")
  void everySwitch_hasASentence(RuleSwitch rule) {
    RuleMeaning meaning = RuleMeanings.of(rule.key());
    assertThat(meaning.rule()).isEqualTo(rule);
    assertThat(meaning.sentence())
        .matches("(How|Whether|Who|Whose|Which|What|When|In which|From whose) [^.]{10,105}\\.");
  }

  @ParameterizedTest
  @MethodSource("switches")
  void everyWordOfASwitch_isExplainedInTheSwitchsOrder(RuleSwitch rule) {
    RuleMeaning meaning = RuleMeanings.of(rule.key());
    assertThat(meaning.words().keySet()).containsExactlyElementsOf(rule.words());
    assertThat(meaning.words().values()).allMatch(means -> means.matches("[A-Za-z][^.]{0,90}"));
    assertThat(meaning.words().values()).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("switches")
  void usualValue_isThatOfTheStandardRules(RuleSwitch rule) {
    assertThat(RuleMeanings.of(rule.key()).usual())
        .isEqualTo(String.valueOf(TableRules.STANDARD.switches().get(rule.key())));
  }

  @Test
  void allMeanings_standGroupByGroup() {
    assertThat(RuleMeanings.all().stream().map(RuleMeaning::rule).toList())
        .containsExactlyInAnyOrderElementsOf(RuleSwitches.all());
    assertThat(RuleMeanings.all().stream().map(RuleMeaning::group).toList()).isSorted();
    assertThat(RuleMeanings.all().stream().map(RuleMeaning::group).distinct().toList())
        .containsExactly(RuleGroup.values());
    assertThat(Arrays.stream(RuleGroup.values()).map(RuleGroup::title).toList())
        .doesNotHaveDuplicates()
        .contains("Claims and exposures");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      textBlock =
          """
          charleston.pool | OFF | MUSH
          dead.calls | OFF, AUTO | STRATEGY
          tiles.blanks | 0 | a whole number from 1 to 6
          score.pieLimit | NONE | a whole number from 1 to 1000000
          score.doubleAfterWall | false | true
          wall.cold | OFF, NO_MAHJONG_CLAIM, NO_CLAIM | ''
          tiles.jokers | a whole number from 0 to 12 | ''
          """)
  void meaning_saysWhatMayBeSetAndWhatIsNotPlayedYet(String key, String choices, String later) {
    RuleMeaning meaning = RuleMeanings.of(key);
    assertThat(meaning.choices()).isEqualTo(choices);
    assertThat(meaning.notYet()).isEqualTo(later);
    assertThat(meaning.open()).isEqualTo(choices.contains(" "));
  }

  /** What is open can be set to another value; what is not, only to its usual one. */
  @ParameterizedTest
  @MethodSource("switches")
  void switchThatIsNotOpen_hasOneValueOnly(RuleSwitch rule) {
    boolean several = rule.choices().contains(" ");
    assertThat(RuleMeanings.of(rule.key()).open()).isEqualTo(several);
  }

  @Test
  void unknownKey_isRefused() {
    assertThatThrownBy(() -> RuleMeanings.of("wall.hott"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("unknown switch \"wall.hott\"");
  }
}
