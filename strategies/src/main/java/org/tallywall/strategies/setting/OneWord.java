package org.tallywall.strategies.setting;

import java.util.ArrayList;
import java.util.List;

/**
 * One of several words: the names of an enum's constants in small letters, with hyphens.
 *
 * @param options the constants
 * @param <E> the enum
 */
record OneWord<E extends Enum<E>>(List<E> options) implements Kind<E> {
  @Override
  public boolean allows(Object written) {
    return options.stream().anyMatch(option -> word(option).equals(written));
  }

  @Override
  public E read(Object written) {
    return options.stream()
        .filter(option -> word(option).equals(written))
        .findFirst()
        .orElseThrow();
  }

  @Override
  public Object write(E value) {
    return word(value);
  }

  @Override
  public String range(E usual) {
    return "one of " + String.join(", ", words(usual));
  }

  @Override
  public List<String> words(E usual) {
    List<String> words = new ArrayList<>(List.of(word(usual)));
    options.stream().filter(option -> option != usual).map(OneWord::word).forEach(words::add);
    return List.copyOf(words);
  }

  private static String word(Enum<?> option) {
    StringBuilder word = new StringBuilder();
    for (char sign : option.name().toCharArray()) {
      word.append(sign == '_' ? '-' : Character.toLowerCase(sign));
    }
    return word.toString();
  }
}
