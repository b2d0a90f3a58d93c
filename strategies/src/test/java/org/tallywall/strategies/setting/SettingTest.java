package org.tallywall.strategies.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What settings of each kind take, how they are told, and how they are read. */
class SettingTest {
  private enum Word {
    KEEP,
    GIVE_AWAY,
    ASK
  }

  private static final Setting<Integer> TILES =
      Setting.whole("a.tiles").from(-1).to(14).usual(2).says("tiles");
  private static final Setting<Double> SHARE =
      Setting.decimal("a.share").from(0.1).to(20.0).usual(1.0).says("share");
  private static final Setting<Boolean> STEP = Setting.onOff("a.step").usual(true).says("step");
  private static final Setting<Word> WORD =
      Setting.choice("a.word", Word.class).usual(Word.GIVE_AWAY).says("word");

  private static BigDecimal number(String text) {
    return new BigDecimal(text);
  }

  @Test
  void whole_takesWholeNumbersOfItsRangeHoweverWritten() {
    assertThat(List.of("-1", "14", "2.0", "1e1")).allMatch(text -> TILES.allows(number(text)));
    assertThat(List.of("-2", "15", "2.5", "14.01")).noneMatch(text -> TILES.allows(number(text)));
    assertThat(List.of(true, "2", 2)).noneMatch(TILES::allows);
    assertThat(TILES.range()).isEqualTo("a whole number from -1 to 14");
    assertThat(TILES.standard()).isEqualTo(number("2"));
    assertThat(TILES.words()).isEmpty();
  }

  @Test
  void decimal_takesNumbersOfItsRange() {
    assertThat(List.of("0.1", "20", "20.0", "1.25")).allMatch(text -> SHARE.allows(number(text)));
    assertThat(List.of("0.09", "20.001")).noneMatch(text -> SHARE.allows(number(text)));
    assertThat(List.of(true, "2", 2.0)).noneMatch(SHARE::allows);
    assertThat(SHARE.range()).isEqualTo("a number from 0.1 to 20.0");
    assertThat(SHARE.standard()).isEqualTo(number("1"));
  }

  @Test
  void onOff_takesTrueAndFalse() {
    assertThat(List.of(true, false)).allMatch(STEP::allows);
    assertThat(List.of("true", number("1"))).noneMatch(STEP::allows);
    assertThat(STEP.range()).isEqualTo("true or false");
    assertThat(STEP.standard()).isEqualTo(true);
  }

  @Test
  void choice_takesTheWordsOfItsEnum_theUsualOneToldFirst() {
    assertThat(List.of("keep", "give-away", "ask")).allMatch(WORD::allows);
    assertThat(List.of("KEEP", "give_away", "", true)).noneMatch(WORD::allows);
    assertThat(WORD.words()).containsExactly("give-away", "keep", "ask");
    assertThat(WORD.range()).isEqualTo("one of give-away, keep, ask");
    assertThat(WORD.standard()).isEqualTo("give-away");
  }

  @Test
  void values_areReadByTheConstant() {
    SettingValues values =
        new SettingValues(
            List.of(TILES, SHARE, STEP, WORD),
            Map.of("a.tiles", number("7.0"), "a.share", number("0.3"), "a.word", "ask"));
    assertThat(values.get(TILES)).isEqualTo(7);
    assertThat(values.get(SHARE)).isEqualTo(0.3);
    assertThat(values.get(STEP)).isTrue();
    assertThat(values.get(WORD)).isEqualTo(Word.ASK);
  }

  @Test
  void settingThatThePlayerDoesNotHave_isRefused() {
    SettingValues values = SettingValues.standard(List.of(TILES));
    assertThatThrownBy(() -> values.get(STEP))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no setting a.step");
    assertThatThrownBy(() -> new SettingValues(List.of(TILES), Map.of("a.tile", number("2"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no setting a.tile");
  }

  @Test
  void valueOutOfTheRange_isRefused() {
    assertThatThrownBy(() -> new SettingValues(List.of(TILES), Map.of("a.tiles", number("15"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a.tiles is a whole number from -1 to 14");
  }

  @Test
  void settingWithoutAUsualValue_isRefused() {
    assertThatThrownBy(() -> Setting.onOff("a.step").says("step"))
        .isInstanceOf(NullPointerException.class)
        .hasMessage("a.step has no usual value");
  }
}
