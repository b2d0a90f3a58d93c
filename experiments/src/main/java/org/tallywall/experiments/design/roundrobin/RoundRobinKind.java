package org.tallywall.experiments.design.roundrobin;

import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.experiments.design.DesignKind;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.design.PlayersReader;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Bounds;
import org.tallywall.strategies.catalog.Catalog;

/** Studies in which everyone plays everyone. */
public final class RoundRobinKind implements DesignKind {
  /** The kind. */
  public RoundRobinKind() {}

  @Override
  public String name() {
    return RoundRobinDesign.NAME;
  }

  @Override
  public List<String> fields() {
    return List.of();
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
    PlayersReader reader = new PlayersReader(study, faults, catalog);
    List<Arm> players = reader.named(name(), false, Bounds.MOST_PLAYERS);
    boolean enough =
        reader.enough(
            name(),
            players,
            4,
            "everyone against everyone takes four players or more; for fewer write \"arms\"");
    return enough ? new RoundRobinDesign(players) : null;
  }
}
