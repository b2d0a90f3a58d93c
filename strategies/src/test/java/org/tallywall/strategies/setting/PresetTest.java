package org.tallywall.strategies.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ways of playing told by what they set otherwise. */
class PresetTest {
  private enum Word {
    AS_USUAL,
    OTHER_WAY
  }

  private static final Setting<Integer> TILES =
      Setting.whole("a.tiles").from(1).to(4).usual(2).says("tiles");
  private static final Setting<Double> SHARE =
      Setting.decimal("a.share").from(0.0).to(1.0).usual(0.5).says("share");
  private static final Setting<Boolean> STEP = Setting.onOff("a.step").usual(false).says("step");
  private static final Setting<Word> WORD =
      Setting.choice("a.word", Word.class).usual(Word.AS_USUAL).says("word");

  private final Preset all = Preset.of(List.of(TILES, SHARE, STEP, WORD));

  @Test
  void differences_becomeTheUsualValues_inTheOldOrder() {
    Preset other = all.with(WORD, Word.OTHER_WAY).with(STEP, true).with(SHARE, 0.25).with(TILES, 4);
    assertThat(other.settings())
        .extracting(setting -> setting.name() + " " + setting.standard() + " " + setting.meaning())
        .containsExactly(
            "a.tiles 4 tiles", "a.share 0.25 share", "a.step true step", "a.word other-way word");
    SettingValues values = SettingValues.standard(other.settings());
    assertThat(values.get(TILES)).isEqualTo(4);
    assertThat(values.get(SHARE)).isEqualTo(0.25);
    assertThat(values.get(STEP)).isTrue();
    assertThat(values.get(WORD)).isEqualTo(Word.OTHER_WAY);
    assertThat(all.settings()).containsExactly(TILES, SHARE, STEP, WORD);
  }

  @Test
  void settingThatThePlayerDoesNotHave_isRefused() {
    Setting<Integer> misspelt = Setting.whole("a.tile").from(1).to(4).usual(2).says("tiles");
    assertThatThrownBy(() -> all.with(misspelt, 3))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no setting a.tile");
  }

  @Test
  void valueOutOfTheRange_isRefused() {
    assertThatThrownBy(() -> all.with(TILES, 5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a.tiles is a whole number from 1 to 4");
    assertThatThrownBy(() -> all.with(SHARE, 1.01))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a.share is a number from 0.0 to 1.0");
  }

  @Test
  void valueThatIsTheUsualAnyway_isRefused() {
    assertThatThrownBy(() -> all.with(TILES, 2)).hasMessage("a.tiles is 2 already");
    Preset three = all.with(TILES, 3);
    assertThatThrownBy(() -> three.with(TILES, 3)).hasMessage("a.tiles is 3 already");
    assertThat(three.with(TILES, 2).settings().get(0).standard()).isEqualTo(new BigDecimal("2"));
  }
}
