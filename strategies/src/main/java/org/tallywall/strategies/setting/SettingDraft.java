package org.tallywall.strategies.setting;

/**
 * A setting of which the usual value and the saying are still to be said.
 *
 * @param <T> what players read
 */
public final class SettingDraft<T> {
  private final String name;
  private final Kind<T> kind;
  private final T usual;

  SettingDraft(String name, Kind<T> kind, T usual) {
    this.name = name;
    this.kind = kind;
    this.usual = usual;
  }

  /**
   * What it is where a study says nothing.
   *
   * @param value the usual value
   * @return the draft with it
   */
  public SettingDraft<T> usual(T value) {
    return new SettingDraft<>(name, kind, value);
  }

  /**
   * What it does.
   *
   * @param meaning in words, with the saying that it expresses
   * @return the setting
   */
  public Setting<T> says(String meaning) {
    return new Setting<>(name, kind, usual, meaning);
  }
}
