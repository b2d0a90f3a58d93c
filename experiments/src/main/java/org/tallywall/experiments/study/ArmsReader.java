package org.tallywall.experiments.study;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Reads ways of playing, and who sits with the studied player. */
final class ArmsReader {
  private static final String ROTATE = "rotate";
  private static final String NAME = "[A-Za-z0-9][A-Za-z0-9 _.-]{0,59}";

  private final FieldReader fields;
  private final Faults faults;
  private final Catalog catalog;

  ArmsReader(FieldReader fields, Faults faults, Catalog catalog) {
    this.fields = fields;
    this.faults = faults;
    this.catalog = catalog;
  }

  /** The design {@code arms}, or null where it has a fault. */
  Design.Arms arms() {
    List<Arm> arms = named("arms");
    boolean enough = enough("arms", arms, 2, "two ways of playing or more are compared");
    int baseline = baseline(arms);
    PlayerSpec others = others();
    List<Integer> seats = seats();
    Streams streams = streams();
    return enough && baseline >= 0 && others != null
        ? new Design.Arms(arms, baseline, others, seats, streams)
        : null;
  }

  /** The design {@code round-robin}, or null where it has a fault. */
  Design.RoundRobin roundRobin() {
    List<Arm> players = named("round-robin");
    boolean enough =
        enough(
            "round-robin",
            players,
            4,
            "everyone against everyone takes four players or more; for fewer write \"arms\"");
    return enough ? new Design.RoundRobin(players) : null;
  }

  private boolean enough(String field, List<Arm> arms, int least, String message) {
    boolean isObject = fields.node(field).value() instanceof Node.Fields;
    boolean enough =
        isObject && ((Node.Fields) fields.node(field).value()).values().size() >= least;
    if (isObject && !enough) {
      fields.fault(field, message);
    }
    return enough && arms.size() >= least;
  }

  private List<Arm> named(String field) {
    List<Arm> arms = new ArrayList<>();
    if (!(fields.node(field).value() instanceof Node.Fields object)) {
      fields.fault(
          field,
          "\"%s\" is an object with a name for each player, not %s"
              .formatted(field, fields.node(field).kind()));
      return arms;
    }
    for (Map.Entry<String, Node> entry : object.values().entrySet()) {
      if (!entry.getKey().matches(NAME)) {
        faults.fault(
            object.places().get(entry.getKey()),
            "the name \"%s\" cannot be used; write letters a-z, digits, spaces, dots and hyphens, 60"
                    .formatted(entry.getKey())
                + " at most");
      }
      PlayerSpec player = field.equals("arms") ? honest(entry.getValue()) : read(entry.getValue());
      if (player != null) {
        arms.add(new Arm(entry.getKey(), player));
      }
    }
    return arms;
  }

  private PlayerSpec read(Node node) {
    return catalog.read(node, faults);
  }

  /** A player that sees no more than its seat may; another is a fault. */
  PlayerSpec honest(Node node) {
    PlayerSpec player = read(node);
    if (player != null && player.type().seesEverything()) {
      faults.fault(
          node.place(),
          "the player \"%s\" sees all tiles; it may sit at a \"table\" or in a \"round-robin\" only"
              .formatted(player.type().id()));
      return null;
    }
    return player;
  }

  private int baseline(List<Arm> arms) {
    if (!fields.require("baseline", "the name of the way that the others are compared with")) {
      return -1;
    }
    String name = fields.text("baseline", "");
    List<String> names = arms.stream().map(Arm::name).toList();
    int at = names.indexOf(name);
    if (at < 0 && !names.isEmpty() && fields.node("baseline").value() instanceof String) {
      fields.fault(
          "baseline",
          "no way of playing is called \"%s\"; the nearest is \"%s\""
              .formatted(name, Nearest.of(name, names)));
    }
    return at;
  }

  /** Who sits in the other seats, or null where that has a fault. */
  PlayerSpec others() {
    return fields.require("others", "who sits in the other seats, as in \"others\": \"reckoner\"")
        ? honest(fields.node("others"))
        : null;
  }

  /** Where the studied player sits. */
  List<Integer> seats() {
    if (!fields.has("seats")) {
      return Design.ROTATE;
    }
    Object value = fields.node("seats").value();
    if (ROTATE.equals(value)) {
      return Design.ROTATE;
    }
    if (value instanceof BigDecimal number) {
      for (int seat = 0; seat < 4; seat++) {
        if (number.compareTo(BigDecimal.valueOf(seat)) == 0) {
          return List.of(seat);
        }
      }
    }
    fields.fault("seats", "\"seats\" is \"rotate\" or the number of one seat, 0 (East) to 3");
    return Design.ROTATE;
  }

  /** Whether ways of playing share their luck. */
  Streams streams() {
    String text = fields.text("streams", Streams.SAME.text());
    if (text.equals(Streams.OWN.text())) {
      return Streams.OWN;
    }
    if (!text.equals(Streams.SAME.text())) {
      fields.fault("streams", "\"streams\" is \"same\" or \"own\", not \"%s\"".formatted(text));
    }
    return Streams.SAME;
  }
}
