package org.tallywall.experiments.design.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;
import org.tallywall.experiments.design.DesignKind;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.reports.schema.Show;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Studies of one fixed table. */
public final class TableKind implements DesignKind {
  /** The kind. */
  public TableKind() {}

  @Override
  public String name() {
    return TableDesign.NAME;
  }

  @Override
  public List<String> fields() {
    return List.of(Show.FIELD);
  }

  @Override
  public boolean needsPrimary() {
    return false;
  }

  @Override
  public boolean stopsEarly() {
    return false;
  }

  @Override
  public PlayedDesign read(FieldReader study, Faults faults, Catalog catalog) {
    List<Node> nodes = study.list(name());
    boolean isList = study.node(name()).value() instanceof Node.Items;
    if (isList && nodes.size() != 4) {
      study.fault(name(), "a table has four players, East first; this one has " + nodes.size());
    }
    List<PlayerSpec> players = new ArrayList<>();
    for (Node node : nodes) {
      PlayerSpec player = catalog.read(node, faults);
      if (player != null) {
        players.add(player);
      }
    }
    Optional<Show> show = study.has(Show.FIELD) ? show(study) : Optional.empty();
    return players.size() == 4 ? new TableDesign(players, show) : null;
  }

  private static Optional<Show> show(FieldReader study) {
    List<String> names = Show.names();
    String known = String.join(", ", names);
    if (!(study.node(Show.FIELD).value() instanceof String text)) {
      study.fault(Show.FIELD, "\"show\" is one of " + known);
      return Optional.empty();
    }
    Optional<Show> show = Show.of(text);
    if (show.isEmpty()) {
      study.fault(
          Show.FIELD,
          "nothing to show is called \"%s\"%s".formatted(text, Nearest.advice(text, names)));
    }
    return show;
  }
}
