package org.tallywall.experiments.reading;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class In100Test {
  @Test
  void chances_areWholeHundredths_andNeverCalledSure() {
    assertThat(In100.number(0)).isEqualTo("under 1");
    assertThat(In100.number(0.0099)).isEqualTo("under 1");
    assertThat(In100.number(0.01)).isEqualTo("1");
    assertThat(In100.number(0.126)).isEqualTo("13");
    assertThat(In100.number(0.99)).isEqualTo("99");
    assertThat(In100.number(0.9901)).isEqualTo("over 99");
    assertThat(In100.number(1)).isEqualTo("over 99");
    assertThat(In100.guesses(0)).isEqualTo("in fewer than 1 of 100 guesses");
    assertThat(In100.guesses(0.5)).isEqualTo("in 50 of 100 guesses");
    assertThat(In100.guesses(1)).isEqualTo("in nearly every guess");
  }
}
