package org.tallywall.experiments.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.setting.Setting;

/** Writes what several designs, and rules for stopping, have in a study file. */
public final class DesignJson {
  private DesignJson() {}

  /**
   * Where the studied player sits.
   *
   * @param seats its seats
   * @return as a study file has it
   */
  public static Object seats(List<Integer> seats) {
    return seats.size() == 1 ? seats.get(0) : "rotate";
  }

  /**
   * Players by their names.
   *
   * @param arms the players
   * @param player writes a player
   * @return as a study file has it
   */
  public static Map<String, Object> named(List<Arm> arms, Function<PlayerSpec, Object> player) {
    Map<String, Object> written = new LinkedHashMap<>();
    arms.forEach(arm -> written.put(arm.name(), player.apply(arm.player())));
    return written;
  }

  static Map<String, Object> until(Until until, boolean points) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("rule", until.rule().text());
    if (until.goal() == Until.Goal.HALF_WIDTH) {
      written.put("half-width", shortest(until.halfWidth()));
    } else if (until.test().isEmpty()) {
      written.put("clear", true);
    }
    written.put("at-most", until.atMost());
    until
        .expected()
        .ifPresent(
            expected ->
                written.put(points ? "expected-sd" : "expected-discordance", shortest(expected)));
    until
        .test()
        .ifPresent(
            test -> {
              written.put("difference", shortest(test.difference()));
              written.put("false-alarm", shortest(test.falseAlarm()));
              written.put("miss", shortest(test.miss()));
            });
    return written;
  }

  /** The number as a person wrote it, where fifteen digits lead back to it; else in full. */
  static BigDecimal shortest(double number) {
    BigDecimal whole = new BigDecimal(number);
    BigDecimal few = Setting.plain(whole.round(new MathContext(15)));
    return few.doubleValue() == number ? few : whole.round(new MathContext(17));
  }
}
