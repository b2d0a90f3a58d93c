package org.tallywall.strategies.setting;

import java.util.function.BiFunction;

/**
 * A number of which the range is still to be said.
 *
 * @param <T> what players read
 */
public final class RangeDraft<T extends Number> {
  private final String name;
  private final BiFunction<T, T, Kind<T>> kind;
  private final T least;

  RangeDraft(String name, BiFunction<T, T, Kind<T>> kind, T least) {
    this.name = name;
    this.kind = kind;
    this.least = least;
  }

  /**
   * From where it goes.
   *
   * @param smallest the smallest value
   * @return the draft with it
   */
  public RangeDraft<T> from(T smallest) {
    return new RangeDraft<>(name, kind, smallest);
  }

  /**
   * Up to where it goes.
   *
   * @param largest the largest value
   * @return the draft with its range
   */
  public SettingDraft<T> to(T largest) {
    return new SettingDraft<>(name, kind.apply(least, largest), null);
  }
}
