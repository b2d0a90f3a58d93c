package org.tallywall.core.rules;

import static org.tallywall.core.rules.RuleSwitch.flag;
import static org.tallywall.core.rules.RuleSwitch.number;
import static org.tallywall.core.rules.RuleSwitch.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Shown;

/** All switches in the order in which records and studies write them. */
public final class RuleSwitches {
  /** Largest stake per wall game, so that sums over long runs stay exact. */
  private static final int MOST_POINTS = 1_000_000;

  private static final List<RuleSwitch> ALL =
      List.of(
          number("tiles.flowers", 8, 4, 16),
          number("tiles.jokers", 8, 0, 12),
          number("tiles.blanks", 0, 0, 6).notYet("numbers"),
          words("deal.rotateEast", "RIGHT_EVERY_GAME", "KEEP_IF_WINS").notYet("KEEP_IF_WINS"),
          words("wall.lastSegment", "DICE", "NONE").orNumber(0, 99),
          words("wall.hot", "OFF", "PAY_ALL_IF_UNACCOUNTED"),
          number("wall.hotFlowerNeeds", 7, 3, 8),
          words("wall.cold", "OFF", "NO_MAHJONG_CLAIM", "NO_CLAIM"),
          words("wall.finalDiscard.claim", "ANY", "MAHJONG_ONLY", "NONE"),
          words("charleston.first", "COMPULSORY", "NONE"),
          words("charleston.second", "ANY_PLAYER_MAY_STOP", "COMPULSORY", "NONE", "MAJORITY"),
          words("charleston.stopTiming", "AFTER_SEEING_FIRST_LEFT", "BEFORE_SEEING_FIRST_LEFT"),
          words("charleston.stopReveal", "FIRST_STOPPER", "ALL", "NOBODY"),
          words("charleston.blind", "FIRST_LEFT_AND_LAST_RIGHT", "NONE", "ALL_PASSES"),
          number("charleston.blindMax", 3, 1, 3),
          words("charleston.courtesy", "LOWER_NUMBER", "NONE"),
          words("charleston.courtesyReveal", "BOTH_NUMBERS", "LOWER_ONLY"),
          flag("charleston.jokersMayPass", false),
          words("charleston.pool", "OFF", "MUSH").notYet("MUSH"),
          flag("east.heavenly", true),
          flag("east.earthlyBetweenRounds", true),
          words("claims.priority", "MAHJONG_THEN_TURN_ORDER", "TURN_ORDER_ONLY"),
          words("claims.firstExposedKeeps", "NOT_APPLICABLE", "REACTION_TIMES")
              .notYet("REACTION_TIMES"),
          flag("claims.mahjongViaExchange", false),
          flag("claims.losingClaimsPublic", true),
          words("claims.lineFit", "STRICT", "LENIENT"),
          number("claims.minNaturalsFromRack", 0, 0, 1),
          words("exposure.selfDrawn", "FORBIDDEN", "ALLOWED").notYet("ALLOWED"),
          words("exposure.promote", "FORBIDDEN", "ALLOWED").notYet("ALLOWED"),
          words("joker.exchange", "ON", "OFF", "OWN_ONLY", "OTHERS_ONLY"),
          words("joker.exchangePerTurn", "UNLIMITED").orNumber(1, 1),
          flag("joker.exchangeAfterClaim", true),
          flag("joker.discardClaimable", false),
          words("win.exchangePaidAs", "SELF_DRAWN", "SINGLE"),
          words("win.multiple", "ONE_NEAREST"),
          flag("win.autoBestLine", true),
          flag("win.mayDecline", true),
          words("dead.calls", "OFF", "AUTO", "STRATEGY").notYet("STRATEGY"),
          words("dead.threeDead", "VOID", "WALL"),
          number("score.discarder", 2, 1, 4),
          number("score.othersOnDiscard", 1, 0, 1),
          number("score.selfDrawn", 2, 1, 2),
          number("score.jokerless", 2, 1, 2),
          words("score.jokerlessExcludes", "NO_GROUP_OF_3_PLUS", "CARD_FLAG", "NONE"),
          flag("score.oneHandRule", false),
          number("score.wallGame", 0, -MOST_POINTS, MOST_POINTS),
          number("score.kitty", 0, 0, MOST_POINTS).notYet("numbers"),
          flag("score.doubleAfterWall", false).notYet(true),
          flag("score.diceDoubles", false),
          words("score.pieLimit", "NONE").orNumber(1, MOST_POINTS).notYet("numbers"),
          number("players", 4, 4, 4));

  private RuleSwitches() {}

  /**
   * All switches.
   *
   * @return an unmodifiable list in the fixed order
   */
  public static List<RuleSwitch> all() {
    return ALL;
  }

  /**
   * A switch by its key.
   *
   * @param key as in {@code wall.cold}
   * @return the switch, or nothing
   */
  public static Optional<RuleSwitch> find(String key) {
    return ALL.stream().filter(known -> known.key().equals(key)).findFirst();
  }

  /**
   * What to say about a key that no switch has.
   *
   * @param key the key
   * @return a sentence with the nearest key and all of them
   */
  static String unknown(String key) {
    List<String> keys = ALL.stream().map(RuleSwitch::key).toList();
    return String.format(
        Locale.ROOT,
        "unknown switch \"%s\"%s (all: tallywall rules)",
        Shown.word(key),
        Nearest.hint(key, keys));
  }
}
