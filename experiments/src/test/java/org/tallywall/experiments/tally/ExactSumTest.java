package org.tallywall.experiments.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;

/** Sums stay exact beyond 64 bits. */
class ExactSumTest {

  @Test
  void add_beyondSixtyFourBits_isExact() {
    ExactSum sum = new ExactSum();
    BigInteger expected = BigInteger.ZERO;
    long[] numbers = {Long.MAX_VALUE, Long.MAX_VALUE, 1, Long.MIN_VALUE, Long.MIN_VALUE, -7, 5};
    for (long number : numbers) {
      sum.add(number);
      expected = expected.add(BigInteger.valueOf(number));
      assertThat(sum.value()).isEqualTo(expected);
    }
  }

  @Test
  void addSquare_smallAndHuge_isExact() {
    ExactSum sum = new ExactSum();
    BigInteger expected = BigInteger.ZERO;
    long[] numbers = {0, -3, 3_037_000_499L, 3_037_000_500L, -12_000_000_000L, Long.MIN_VALUE};
    for (long number : numbers) {
      sum.addSquare(number);
      expected = expected.add(BigInteger.valueOf(number).pow(2));
      assertThat(sum.value()).isEqualTo(expected);
    }
  }

  @Test
  void add_otherSum_isTheSameInAnyOrder() {
    ExactSum a = new ExactSum();
    ExactSum b = new ExactSum();
    a.add(Long.MAX_VALUE);
    a.add(9);
    b.addSquare(Long.MAX_VALUE);
    b.add(-4);
    ExactSum ab = new ExactSum();
    ab.add(a);
    ab.add(b);
    ExactSum ba = new ExactSum();
    ba.add(b);
    ba.add(a);

    assertThat(ab.value()).isEqualTo(ba.value()).isEqualTo(a.value().add(b.value()));
  }
}
