package org.tallywall.experiments.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Node;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Reads how the games of a study are laid out: one of five designs. */
final class DesignReader {
  private static final List<String> DESIGNS =
      List.of("arms", "table", "round-robin", "sweep", "branch");
  private static final Map<String, List<String>> FIELDS =
      Map.of(
          "arms", List.of("baseline", "others", "seats", "streams"),
          "table", List.of(),
          "round-robin", List.of(),
          "sweep", List.of("others", "seats", "streams"),
          "branch", List.of("others", "seats"));
  private static final List<String> OF_DESIGNS = List.of("baseline", "others", "seats", "streams");

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
    List<String> written = DESIGNS.stream().filter(fields::has).toList();
    if (written.size() > 1) {
      fields.fault(
          written.get(1), "a study has one design; this one has " + String.join(" and ", written));
      return null;
    } else if (written.isEmpty()) {
      fields.require(
          "table",
          "who plays, as in \"table\": [\"nearest\", \"nearest\", \"nearest\", \"nearest\"];"
              + " or arms, round-robin, sweep or branch");
      return null;
    }
    return read(written.get(0));
  }

  private Design read(String design) {
    for (String field : OF_DESIGNS) {
      if (fields.has(field) && !FIELDS.get(design).contains(field)) {
        fields.fault(
            field, "\"" + field + "\" has no meaning for a \"" + design + "\"; take it out");
      }
    }
    if (!design.equals("table") && !design.equals("round-robin")) {
      fields.require(
          "primary", "the measure that answers the question, as in \"primary\": \"points\"");
    }
    return switch (design) {
      case "arms" -> new ArmsReader(fields, faults, catalog).arms();
      case "round-robin" -> new ArmsReader(fields, faults, catalog).roundRobin();
      case "sweep" -> new SweepReader(fields, faults, catalog).read();
      case "branch" -> new BranchReader(fields, faults, catalog).read();
      default -> table();
    };
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
