package org.tallywall.experiments.design.sweep;

import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.experiments.design.DesignKind;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.strategies.catalog.Catalog;

/** Studies of one setting at several values. */
public final class SweepKind implements DesignKind {
  /** The kind. */
  public SweepKind() {}

  @Override
  public String name() {
    return SweepDesign.NAME;
  }

  @Override
  public List<String> fields() {
    return List.of("others", "seats", "streams");
  }

  @Override
  public boolean needsPrimary() {
    return true;
  }

  @Override
  public boolean stopsEarly() {
    return true;
  }

  @Override
  public PlayedDesign read(FieldReader study, Faults faults, Catalog catalog) {
    return new SweepReader(study, faults, catalog).read();
  }
}
