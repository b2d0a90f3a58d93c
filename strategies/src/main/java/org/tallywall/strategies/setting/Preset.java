package org.tallywall.strategies.setting;

import java.util.List;

/**
 * A way of playing that is told by what it sets otherwise than another. A setting that the other
 * does not have, a value out of its range and one that is the usual anyway are refused at once, so
 * that no line of a preset is without effect.
 */
public final class Preset {
  private final List<Setting<?>> settings;

  private Preset(List<Setting<?>> settings) {
    this.settings = List.copyOf(settings);
  }

  /**
   * Begins with the settings of another player.
   *
   * @param settings what it sets, with its usual values
   * @return a preset that differs in nothing yet
   */
  public static Preset of(List<Setting<?>> settings) {
    return new Preset(settings);
  }

  /**
   * One more difference.
   *
   * @param setting the setting, as it was declared
   * @param usual what it is usually from now on
   * @param <T> what its values are
   * @return a preset with it
   * @throws IllegalArgumentException if there is no such setting, it may not be that, or it is that
   *     already
   */
  public <T> Preset with(Setting<T> setting, T usual) {
    Setting<T> changed = setting.usually(usual);
    Setting<?> now =
        settings.stream()
            .filter(one -> one.name().equals(setting.name()))
            .findFirst()
            .orElseThrow(
                () -> new IllegalArgumentException("there is no setting " + setting.name()));
    if (!setting.takes(usual)) {
      throw new IllegalArgumentException(setting.name() + " is " + setting.range());
    }
    if (changed.standard().equals(now.standard())) {
      throw new IllegalArgumentException(setting.name() + " is " + usual + " already");
    }
    return new Preset(
        settings.stream().<Setting<?>>map(one -> one == now ? changed : one).toList());
  }

  /**
   * All settings.
   *
   * @return in the order of those begun with, with the usual values of this way of playing
   */
  public List<Setting<?>> settings() {
    return settings;
  }
}
