package org.tallywall.experiments.design.arms;

import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Nearest;
import org.tallywall.experiments.design.PlayersReader;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Bounds;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Reads ways of playing that are compared. */
final class ArmsReader {
  private final FieldReader fields;
  private final PlayersReader players;

  ArmsReader(FieldReader fields, Faults faults, Catalog catalog) {
    this.fields = fields;
    this.players = new PlayersReader(fields, faults, catalog);
  }

  /** The design, or null where it has a fault. */
  ArmsDesign read() {
    List<Arm> arms =
        players.named(ArmsDesign.NAME, true, Bounds.MOST_WAYS).stream().map(Arm::marked).toList();
    boolean enough =
        players.enough(ArmsDesign.NAME, arms, 2, "two ways of playing or more are compared");
    if (arms.stream().map(Arm::name).distinct().count() < arms.size()) {
      fields.fault(ArmsDesign.NAME, "two ways of playing have the same name but for their marks");
      return null;
    }
    int baseline = baseline(arms);
    PlayerSpec others = players.others();
    List<Integer> seats = players.seats();
    Streams streams = Streams.read(fields);
    return enough && baseline >= 0 && others != null
        ? new ArmsDesign(arms, baseline, others, seats, streams)
        : null;
  }

  private int baseline(List<Arm> arms) {
    if (!fields.require("baseline", "the name of the way that the others are compared with")) {
      return -1;
    }
    String name = fields.text("baseline", "");
    List<String> names = arms.stream().map(arm -> Arm.plain(arm.name())).toList();
    int at = names.indexOf(Arm.plain(name));
    if (at < 0 && !names.isEmpty() && fields.node("baseline").value() instanceof String) {
      fields.fault(
          "baseline",
          "no way of playing is called \"%s\"%s".formatted(name, Nearest.advice(name, names)));
    }
    return at;
  }
}
