package org.tallywall.core.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text from outside reaches no terminal as it is. */
class ShownTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "plain",
        "a\u0301 Übung 漢 ‘…’ עברית",
        "\ud83d\ude00",
        "\\u{1b} stays",
        "a\u200db"
      })
  void text_thatHarmsNobody_staysAsItIs(String text) {
    assertThat(Shown.text(text)).isSameAs(text);
    assertThat(Shown.broken(text)).isFalse();
  }

  @Test
  void text_ofEverySingleCharacter_holdsNoneThatATerminalObeys() {
    for (int at = 0; at <= Character.MAX_VALUE; at++) {
      String shown = Shown.text("a" + (char) at + "b");
      assertThat(shown)
          .doesNotMatch("(?s).*[\\p{Cc}\\p{Cs}\\p{Zl}\\p{Zp}\u202a-\u202e\u2066-\u2069].*");
      assertThat(Shown.text(shown)).isEqualTo(shown);
    }
    assertThat(Shown.text("x\u001b]0;t\u0007\n\u202e\u2028\u009b"))
        .isEqualTo("x\\u{1b}]0;t\\u{7}\\u{a}\\u{202e}\\u{2028}\\u{9b}");
  }

  @Test
  void halfACharacter_isSeenAndNamed() {
    for (String text : new String[] {"\ud800", "a\udc00b", "\udc00\ud800", "\ud800\ud800\udc00"}) {
      assertThat(Shown.broken(text)).isTrue();
      assertThat(Shown.text(text)).contains("\\u{d");
    }
  }

  @Test
  void word_thatGoesOnForLong_isCutBetweenCharacters() {
    assertThat(Shown.word("x".repeat(80))).isEqualTo("x".repeat(80));
    assertThat(Shown.word("x".repeat(81))).isEqualTo("x".repeat(80) + "…");
    assertThat(Shown.word("x".repeat(79) + "\ud83d\ude00 and more"))
        .isEqualTo("x".repeat(79) + "…");
    assertThat(Shown.word("\n".repeat(50_000_000))).hasSize(80 * 5 + 1);
  }
}
