package org.tallywall.experiments.design;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.Place;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Design;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Reads what several designs have: named players, who sits with the studied one, and where. */
public final class PlayersReader {
  private static final String ROTATE = "rotate";
  private static final String NAME = "[A-Za-z0-9][A-Za-z0-9 _.-]{0,59}";

  private final FieldReader fields;
  private final Faults faults;
  private final Catalog catalog;

  /**
   * A reader of a study.
   *
   * @param fields the study file
   * @param faults takes what is wrong
   * @param catalog the players that can be named
   */
  public PlayersReader(FieldReader fields, Faults faults, Catalog catalog) {
    this.fields = fields;
    this.faults = faults;
    this.catalog = catalog;
  }

  /**
   * Whether a field names players enough; an object that does not is a fault.
   *
   * @param field the field
   * @param arms those of its players that could be read
   * @param least how many there must be
   * @param message what to say of fewer
   * @return whether there are as many, all of them without a fault
   */
  public boolean enough(String field, List<Arm> arms, int least, String message) {
    boolean isObject = fields.node(field).value() instanceof Node.Fields;
    boolean enough =
        isObject && ((Node.Fields) fields.node(field).value()).values().size() >= least;
    if (isObject && !enough) {
      fields.fault(field, message);
    }
    return enough && arms.size() >= least;
  }

  /**
   * Players by their names.
   *
   * @param field the field that holds them
   * @param honest whether a player that sees all tiles is a fault
   * @param most how many there may be; with more, none is read
   * @return those that could be read
   */
  public List<Arm> named(String field, boolean honest, int most) {
    List<Arm> arms = new ArrayList<>();
    if (!(fields.node(field).value() instanceof Node.Fields object)) {
      fields.fault(
          field,
          "\"%s\" is an object with a name for each player, not %s"
              .formatted(field, fields.node(field).kind()));
      return arms;
    }
    if (object.values().size() > most) {
      fields.fault(
          field,
          "\"%s\" names %s players; a study takes %s at most"
              .formatted(field, object.values().size(), most));
      return arms;
    }
    for (Map.Entry<String, Node> entry : object.values().entrySet()) {
      checkName(entry.getKey(), object.places().get(entry.getKey()));
      PlayerSpec player = honest ? honest(entry.getValue()) : read(entry.getValue());
      if (player != null) {
        arms.add(new Arm(entry.getKey(), player));
      }
    }
    return arms;
  }

  /**
   * Refuses a name that cannot stand for a player.
   *
   * @param name the name
   * @param place where it is written
   */
  public void checkName(String name, Place place) {
    if (!Arm.plain(name).matches(NAME)) {
      faults.fault(
          place,
          "the name \"%s\" cannot be used; write letters a-z, digits, spaces, dots and hyphens, 60"
                  .formatted(name)
              + " at most");
    }
  }

  private PlayerSpec read(Node node) {
    return catalog.read(node, faults);
  }

  /**
   * A player that sees no more than its seat may, whatever it is set to; another is a fault.
   *
   * @param node what is written
   * @return the player, or null where it has a fault
   */
  public PlayerSpec fair(Node node) {
    PlayerSpec player = honest(node);
    if (player != null && player.mark().isPresent()) {
      faults.fault(
          node.place(),
          "the player \"%s\" %s by its settings; it may sit at a \"table\" or in a \"round-robin\", be one of \"arms\", or be swept"
              .formatted(player.type().id(), player.mark().get()));
      return null;
    }
    return player;
  }

  /**
   * A player of a kind that sees no more than its seat may; another is a fault. Its settings may
   * make a yardstick of it.
   *
   * @param node what is written
   * @return the player, or null where it has a fault
   */
  public PlayerSpec honest(Node node) {
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

  /**
   * Who sits in the other seats.
   *
   * @return the player, or null where it has a fault
   */
  public PlayerSpec others() {
    return fields.require("others", "who sits in the other seats, as in \"others\": \"reckoner\"")
        ? fair(fields.node("others"))
        : null;
  }

  /**
   * Where the studied player sits.
   *
   * @return its seats, one after the other
   */
  public List<Integer> seats() {
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
}
