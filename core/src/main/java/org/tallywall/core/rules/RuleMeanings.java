package org.tallywall.core.rules;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What every switch means, in words for whoever sets it. */
public final class RuleMeanings {
  private static final Map<String, RuleMeaning> BY_KEY =
      Stream.of(MeaningsBeforePlay.all(), MeaningsOfPlay.all(), MeaningsOfPay.all())
          .flatMap(List::stream)
          .collect(Collectors.toUnmodifiableMap(RuleMeaning::key, Function.identity()));

  private static final List<RuleMeaning> ALL =
      Arrays.stream(RuleGroup.values())
          .flatMap(
              group ->
                  RuleSwitches.all().stream()
                      .map(known -> of(known.key()))
                      .filter(meaning -> meaning.group() == group))
          .toList();

  private RuleMeanings() {}

  /**
   * The meanings of all switches.
   *
   * @return group after group as {@link RuleGroup} has them, within a group in the order of {@link
   *     RuleSwitches#all}; unmodifiable
   */
  public static List<RuleMeaning> all() {
    return ALL;
  }

  /**
   * The meaning of a switch.
   *
   * @param key the key of a known switch, as in {@code wall.cold}
   * @return what it means
   * @throws IllegalArgumentException if no switch has that key
   */
  public static RuleMeaning of(String key) {
    RuleMeaning meaning = BY_KEY.get(key);
    if (meaning == null) {
      throw new IllegalArgumentException(RuleSwitches.unknown(key));
    }
    return meaning;
  }
}
