package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/**
 * Every worked case of the rules, EC-01 to EC-75 and EC-55a, has a test that carries its number.
 */
class EdgeCasesAreCompleteTest {
  private static final List<Class<?>> TESTS =
      List.of(
          EdgeCasesOfTheDealTest.class,
          EdgeCasesOfThePassesTest.class,
          EdgeCasesOfTurnsTest.class,
          EdgeCasesOfJokersTest.class,
          EdgeCasesOfWinsTest.class,
          EdgeCasesOfDeadHandsTest.class,
          EdgeCasesOfTheWallTest.class,
          EdgeCasesOfAllGamesTest.class);
  private static final Pattern NUMBER = Pattern.compile("ec(\\d\\d)(a?)_.+");

  @Test
  void everyNumber_hasATest() {
    TreeSet<String> found = new TreeSet<>();
    for (Class<?> tests : TESTS) {
      for (Method method : tests.getDeclaredMethods()) {
        Matcher matcher = NUMBER.matcher(method.getName());
        if (matcher.matches() && runs(method)) {
          found.add(matcher.group(1) + matcher.group(2));
        }
      }
    }
    TreeSet<String> all = new TreeSet<>();
    for (int number = 1; number <= 75; number++) {
      all.add(number < 10 ? "0" + number : String.valueOf(number));
    }
    all.add("55a");
    assertThat(found).isEqualTo(all);
  }

  /** A test that always runs: not switched off, not left to long runs. */
  private static boolean runs(Method method) {
    List<Class<? extends Annotation>> kinds = List.of(Test.class, ParameterizedTest.class);
    boolean test = kinds.stream().anyMatch(method::isAnnotationPresent);
    boolean off =
        Arrays.stream(method.getAnnotations())
            .anyMatch(one -> one instanceof Disabled || one instanceof Tag);
    return test && !off;
  }
}
