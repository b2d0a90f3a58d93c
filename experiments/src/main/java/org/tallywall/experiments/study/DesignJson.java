package org.tallywall.experiments.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.setting.Setting;

/** Writes a design with every default in place. */
final class DesignJson {
  private final Map<String, Object> fields = new LinkedHashMap<>();

  private final Function<PlayerSpec, Object> player;

  private DesignJson(Function<PlayerSpec, Object> player) {
    this.player = player;
  }

  /** The fields of a design, players as a function writes them. */
  static Map<String, Object> fields(Design design, Function<PlayerSpec, Object> player) {
    DesignJson json = new DesignJson(player);
    if (design instanceof Design.Table table) {
      json.fields.put("table", table.players().stream().map(player).toList());
    } else if (design instanceof Design.Arms arms) {
      json.fields.put("arms", json.named(arms.arms()));
      json.fields.put("baseline", arms.arms().get(arms.baseline()).name());
      json.common(arms);
    } else if (design instanceof Design.Sweep sweep) {
      json.sweep(sweep);
    } else if (design instanceof Design.RoundRobin everyone) {
      json.fields.put("round-robin", json.named(everyone.players()));
    } else if (design instanceof Design.Branch branch) {
      json.branch(branch);
    }
    return json.fields;
  }

  private void sweep(Design.Sweep sweep) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("player", player.apply(sweep.player()));
    written.put("setting", sweep.setting());
    written.put("values", sweep.values());
    written.put("baseline", sweep.values().get(sweep.arms().baseline()));
    fields.put("sweep", written);
    common(sweep.arms());
  }

  private void branch(Design.Branch branch) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("at", branch.moment().text());
    Map<String, Object> when = new LinkedHashMap<>();
    branch.cells().values().forEach((feature, values) -> when.put(feature.text(), values));
    written.put("when", when);
    branch.line().ifPresent(line -> written.put("line", line));
    written.put("options", branch.options().stream().map(BranchOption::text).toList());
    written.put("player", player.apply(branch.player()));
    fields.put("branch", written);
    fields.put("others", player.apply(branch.others()));
    fields.put("seats", seats(branch.seats()));
  }

  private void common(Design.Arms arms) {
    fields.put("others", player.apply(arms.others()));
    fields.put("seats", seats(arms.seats()));
    fields.put("streams", arms.streams().text());
  }

  private static Object seats(List<Integer> seats) {
    return seats.size() == 1 ? seats.get(0) : "rotate";
  }

  private Map<String, Object> named(List<Arm> arms) {
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
