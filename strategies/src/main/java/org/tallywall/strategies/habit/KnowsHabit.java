package org.tallywall.strategies.habit;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * What a player knows that no seat may know. These settings make a yardstick of a player: they show
 * what it would be worth to know something, and are no way of playing.
 *
 * @param whoIsOneAway whether it knows who would win on some tile that is thrown now
 * @param waits whether it knows on which tiles
 * @param racks whether it knows which tiles lie in the other racks
 * @param nextDraws how many of its own next draws it knows, 0 to 3; claims of the others shift
 *     later ones too often to build on them
 * @param neverTheWinningTile whether it never throws a tile on which somebody would win
 * @param exposures how many exposures she must show for that
 * @param away from how many tiles away that holds
 */
public record KnowsHabit(
    boolean whoIsOneAway,
    boolean waits,
    boolean racks,
    int nextDraws,
    boolean neverTheWinningTile,
    int exposures,
    int away) {
  /** What is said of a player that knows more than its seat may. */
  public static final String MARK = "sees more than a seat may";

  /** What a fair player knows. */
  public static final KnowsHabit NOTHING = new KnowsHabit(false, false, false, 0, false, 0, 0);

  private static final String NAME = "knows.";
  private static final String NEVER = NAME + "never-the-winning-tile";

  private static final Setting<Boolean> WHO =
      Setting.onOff(NAME + "who-is-one-away")
          .usual(false)
          .says(
              "is told who is one away, though not on what: whoever could win on some tile thrown "
                  + "now");
  private static final Setting<Boolean> WAITS =
      Setting.onOff(NAME + "what-she-waits-for")
          .usual(false)
          .says("is told on which tiles each of the others would win if they were thrown now");
  private static final Setting<Boolean> RACKS =
      Setting.onOff(NAME + "racks")
          .usual(false)
          .says(
              "sees the racks of the others: it counts on drawing no tile that lies there, and "
                  + "knows on which tiles they would win");
  private static final Setting<Integer> NEXT_DRAWS =
      Setting.whole(NAME + "next-draws")
          .from(0)
          .to(3)
          .usual(0)
          .says(
              "is told this many of its own next draws, as they come if nobody claims before, and "
                  + "judges its rack as if it held them");
  private static final Setting<Double> RISK_WEIGHT =
      Setting.decimal(NAME + "risk-weight")
          .from(0.0)
          .to(20.0)
          .usual(1.0)
          .says(
              "counts the points at risk at least this many times as much as the points hoped for, "
                  + "where it is told who is one away or what she waits for");
  private static final Setting<Boolean> NEVER_THE_WINNING_TILE =
      Setting.onOff(NEVER)
          .usual(false)
          .says(
              "never throws a tile on which somebody would win now while it holds another, a joker "
                  + "included, and otherwise throws what it would anyway");
  private static final Setting<Integer> EXPOSURES =
      Setting.whole(NEVER + ".exposures-at-least")
          .from(0)
          .to(4)
          .usual(0)
          .says("does so only against players who show this many exposures or more");
  private static final Setting<Integer> AWAY =
      Setting.whole(NEVER + ".away-at-least")
          .from(0)
          .to(14)
          .usual(0)
          .says("does so only when this many tiles away or further");

  /**
   * The habit.
   *
   * @param values the settings named {@code knows.…}
   * @return what the player knows
   */
  public static KnowsHabit of(SettingValues values) {
    return new KnowsHabit(
        values.get(WHO),
        values.get(WAITS),
        values.get(RACKS),
        values.get(NEXT_DRAWS),
        values.get(NEVER_THE_WINNING_TILE),
        values.get(EXPOSURES),
        values.get(AWAY));
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> settings() {
    return List.of(
        WHO, WAITS, RACKS, NEXT_DRAWS, RISK_WEIGHT, NEVER_THE_WINNING_TILE, EXPOSURES, AWAY);
  }

  /**
   * Whether a player of a record knows anything that its seat may not know.
   *
   * @param settings what differs from the usual, by full names
   * @return true if so
   */
  public static boolean isWrittenIn(Map<?, ?> settings) {
    return Stream.of(WHO, WAITS, RACKS, NEXT_DRAWS, NEVER_THE_WINNING_TILE)
        .anyMatch(
            setting ->
                settings.containsKey(setting.name())
                    && !Setting.same(settings.get(setting.name()), setting.standard()));
  }

  /**
   * Whether the player knows anything that its seat may not know.
   *
   * @return false for a fair player
   */
  public boolean any() {
    return danger() || nextDraws > 0 || neverTheWinningTile;
  }

  /**
   * Whether it knows anything of who would win on what.
   *
   * @return false where danger is only read
   */
  public boolean danger() {
    return whoIsOneAway || waits || racks;
  }

  /**
   * Whether it knows on which tiles each of the others would win.
   *
   * @return true if so
   */
  public boolean knowsWaits() {
    return waits || racks;
  }

  /**
   * How much the points at risk count at least, where the danger is known.
   *
   * @param values the settings named {@code knows.…}
   * @return weight beside the points hoped for; 0 where danger is only read
   */
  static double riskWeight(SettingValues values) {
    return of(values).danger() ? values.get(RISK_WEIGHT) : 0;
  }
}
