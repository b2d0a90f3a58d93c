package org.tallywall.experiments.study;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Node;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Reads how the games of a study are laid out. Of five designs one can be played so far. */
final class DesignReader {
  private static final List<String> DESIGNS =
      List.of("arms", "table", "round-robin", "sweep", "branch");
  private static final List<String> OF_OTHER_DESIGNS = List.of("baseline", "others", "seats");
  private static final List<String> LATER =
      List.of("until", "faults-borne", "decision-seconds", "streams");

  private final FieldReader fields;
  private final Faults faults;
  private final Catalog catalog;

  DesignReader(FieldReader fields, Faults faults, Catalog catalog) {
    this.fields = fields;
    this.faults = faults;
    this.catalog = catalog;
  }

  /** The design, or null where it has a fault. */
  Design read() {
    for (String later : LATER) {
      if (fields.has(later)) {
        fields.fault(later, "not yet: \"" + later + "\" is known but not played yet; take it out");
      }
    }
    List<String> written = DESIGNS.stream().filter(fields::has).toList();
    if (written.size() > 1) {
      fields.fault(
          written.get(1), "a study has one design; this one has " + String.join(" and ", written));
      return null;
    } else if (written.isEmpty()) {
      fields.require(
          "table",
          "who plays, as in \"table\": [\"nearest\", \"nearest\", \"nearest\", \"nearest\"]");
      return null;
    } else if (!written.get(0).equals("table")) {
      fields.fault(
          written.get(0),
          "not yet: the design \"%s\" is known but not played yet; for now a study has a \"table\""
              .formatted(written.get(0)));
      return null;
    }
    refuseFieldsOfOtherDesigns();
    return table();
  }

  private void refuseFieldsOfOtherDesigns() {
    for (String field : OF_OTHER_DESIGNS) {
      if (fields.has(field)) {
        fields.fault(field, "\"" + field + "\" has no meaning for a \"table\"; take it out");
      }
    }
  }

  private Design table() {
    List<Node> nodes = fields.list("table");
    boolean isList = fields.node("table").value() instanceof Node.Items;
    if (isList && nodes.size() != 4) {
      fields.fault("table", "a table has four players, East first; this one has " + nodes.size());
    }
    List<PlayerSpec> players = new ArrayList<>();
    for (Node node : nodes) {
      PlayerSpec player = catalog.read(node, faults);
      if (player != null) {
        players.add(player);
      }
    }
    return players.size() == 4 ? new Design.Table(players) : null;
  }
}
