package org.tallywall.strategies.setting;

import java.util.List;
import java.util.Optional;
import org.tallywall.core.card.Card;

/**
 * What values a setting takes, as a study writes them and as players read them.
 *
 * @param <T> what players read
 */
interface Kind<T> {
  /** Whether a value as written is of this kind and in its range. */
  boolean allows(Object written);

  /** A value that is allowed, as players read it. */
  T read(Object written);

  /** A value as a study writes it: a Boolean, a BigDecimal or a String. */
  Object write(T value);

  /** What it may be, in words. */
  String range(T usual);

  /** The words that it may be, the usual one first; none where it is no choice between words. */
  default List<String> words(T usual) {
    return List.of();
  }

  /** What is wrong with an allowed value on a card; empty where nothing is. */
  default Optional<String> unfit(Object written, Card card) {
    return Optional.empty();
  }
}
