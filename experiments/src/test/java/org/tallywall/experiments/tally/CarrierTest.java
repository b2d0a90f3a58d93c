package org.tallywall.experiments.tally;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.LongUnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.play.TableSetup;

/** Every number of a tally is written and read back: none can be forgotten. */
class CarrierTest {
  private static final TableSetup SETUP = Tables.setup();
  private static final TallyPlan PLAN = new TallyPlan(2, 1, 3, 2, 2);

  /** Puts 1, 2, 3 … into all numbers there are, and expects to find them all in the copy. */
  @Test
  void everyNumber_survivesTheWay() throws IllegalAccessException {
    StudyTally tally = new StudyTally(PLAN, SETUP);
    long[] last = {0};
    walk(tally, number -> ++last[0]);
    NumberWriter out = new NumberWriter();
    tally.carry(out);
    StudyTally again = new StudyTally(PLAN, SETUP);
    NumberReader in = new NumberReader(out.bytes());
    again.carry(in);
    in.end();

    List<Long> found = new ArrayList<>();
    walk(
        again,
        number -> {
          found.add(number);
          return number;
        });
    assertThat(found).hasSizeGreaterThan(2_000);
    assertThat(found).isEqualTo(LongStream.rangeClosed(1, last[0]).boxed().toList());
  }

  /** Changes every number of an object of this package, but those of a deal that is going on. */
  static void walk(Object part, LongUnaryOperator change) throws IllegalAccessException {
    if (part instanceof long[] numbers) {
      Arrays.setAll(numbers, at -> change.applyAsLong(numbers[at]));
    } else if (part instanceof Object[] several) {
      for (Object one : several) {
        walk(one, change);
      }
    } else if (part instanceof Collection<?> several) {
      for (Object one : several) {
        walk(one, change);
      }
    } else if (part.getClass().getName().startsWith(StudyTally.class.getPackageName())
        && !(part instanceof TallyPlan || part instanceof CardFamilies)) {
      for (Field field : part.getClass().getDeclaredFields()) {
        if (!Modifier.isStatic(field.getModifiers()) && !field.getName().endsWith("InDeal")) {
          field.setAccessible(true);
          if (field.getType() == long.class) {
            field.setLong(part, change.applyAsLong(field.getLong(part)));
          } else {
            assertThat(field.getType().isPrimitive()).as(field.toString()).isFalse();
            walk(field.get(part), change);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, -1, 63, 64, -64, -65, 1L << 40, Long.MAX_VALUE, Long.MIN_VALUE})
  void number_ofAnySize_survivesTheWay(long number) {
    NumberWriter out = new NumberWriter();
    out.carry(number);
    out.text("Flut ü");
    NumberReader in = new NumberReader(out.bytes());

    assertThat(in.carry(0)).isEqualTo(number);
    assertThat(in.text()).isEqualTo("Flut ü");
    in.end();
  }

  @Test
  void sumBeyond64Bits_survivesTheWay() {
    ExactSum sum = new ExactSum();
    sum.addSquare(Long.MAX_VALUE);
    sum.add(-7);
    NumberWriter out = new NumberWriter();
    sum.carry(out);
    ExactSum again = new ExactSum();
    again.carry(new NumberReader(out.bytes()));

    assertThat(again.value()).isEqualTo(sum.value());
  }

  @Test
  void tooFewBytes_areRefused() {
    StudyTally tally = new StudyTally(PLAN, SETUP);
    NumberWriter out = new NumberWriter();
    tally.carry(out);
    byte[] bytes = Arrays.copyOf(out.bytes(), out.bytes().length - 1);

    assertThatThrownBy(() -> new StudyTally(PLAN, SETUP).carry(new NumberReader(bytes)))
        .isInstanceOf(UncheckedIOException.class);
    assertThatThrownBy(() -> new NumberReader(new byte[] {1}).end())
        .isInstanceOf(UncheckedIOException.class);
  }
}
