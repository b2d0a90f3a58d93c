package org.tallywall.strategies.catalog;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.tallywall.core.card.Card;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.strategies.habit.KnowsHabit;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * A player as a study names it: its kind and the settings that the study writes.
 *
 * @param type the kind
 * @param changed the settings written, by their full names
 */
public record PlayerSpec(PlayerType type, Map<String, Object> changed) {
  /**
   * A player.
   *
   * @param type the kind
   * @param changed the settings written, by their full names
   */
  public PlayerSpec {
    changed = Collections.unmodifiableMap(new LinkedHashMap<>(changed));
  }

  /**
   * Makes the player.
   *
   * @return a new player, for one seat
   * @throws WrongPlayerException if a player from a jar is none, or wants to see all tiles and does
   *     not say so
   */
  public Player make() {
    Player player = type.factory().apply(new SettingValues(type.settings(), changed));
    if (player == null) {
      throw new WrongPlayerException("the maker of \"" + type.id() + "\" made no player");
    }
    if (player instanceof SeesOpenTable && mark().isEmpty()) {
      throw new WrongPlayerException(
          "the player \"%s\" wants to see all tiles; its entry in the list must say so"
              .formatted(type.id()));
    }
    return player;
  }

  /**
   * What is to be said wherever results show the player, if it sees more than its seat may: then it
   * is a yardstick, not a way of playing.
   *
   * @return words that follow its name; empty for a fair player
   */
  public Optional<String> mark() {
    if (type.seesEverything()) {
      return Optional.of(PlayerType.SEES_ALL);
    }
    boolean may = type.settings().containsAll(KnowsHabit.settings());
    return may && KnowsHabit.of(new SettingValues(type.settings(), changed)).any()
        ? Optional.of(KnowsHabit.MARK)
        : Optional.empty();
  }

  /**
   * The same player with one setting changed.
   *
   * @param name the setting's full name
   * @param value its value
   * @return the player
   * @throws IllegalArgumentException if there is no such setting, or it may not be that
   */
  public PlayerSpec with(String name, Object value) {
    Map<String, Object> more = new LinkedHashMap<>(changed);
    more.put(name, value);
    PlayerSpec spec = new PlayerSpec(type, more);
    spec.make();
    return spec;
  }

  /**
   * The value of a setting, the usual one where the study does not write it.
   *
   * @param setting a setting of the player
   * @return the value as a study writes it
   */
  public Object value(Setting<?> setting) {
    return changed.getOrDefault(setting.name(), setting.standard());
  }

  /**
   * What keeps the player from playing on a card: it names a part of it that is not there.
   *
   * @param card the card
   * @return a sentence that names the setting; empty where nothing does
   */
  public Optional<String> unfit(Card card) {
    for (Setting<?> setting : type.settings()) {
      Optional<String> fault = setting.unfit(value(setting), card);
      if (fault.isPresent()) {
        return Optional.of("the setting \"" + setting.name() + "\": " + fault.get());
      }
    }
    return Optional.empty();
  }

  /**
   * The player as it is written in records: always the same for players that play the same, however
   * a study wrote them.
   *
   * @return its id alone, or a map of {@code player} and the settings that differ from the usual,
   *     by their full names
   */
  public Object written() {
    Map<String, Object> whole = new LinkedHashMap<>();
    whole.put("player", type.id());
    for (Setting<?> setting : type.settings()) {
      Object value = changed.get(setting.name());
      if (value != null && (!isUsual(setting, value) || holdsStepOff(setting))) {
        whole.put(setting.name(), value);
      }
    }
    return whole.size() == 1 ? type.id() : whole;
  }

  private static boolean isUsual(Setting<?> setting, Object value) {
    return Setting.same(value, setting.standard());
  }

  /** A step that is off must be written as off beside a setting of it, which would turn it on. */
  private boolean holdsStepOff(Setting<?> step) {
    return Boolean.FALSE.equals(changed.get(step.name()))
        && type.settings().stream()
            .anyMatch(
                part ->
                    part.name().startsWith(step.name() + ".")
                        && changed.containsKey(part.name())
                        && !isUsual(part, changed.get(part.name())));
  }
}
