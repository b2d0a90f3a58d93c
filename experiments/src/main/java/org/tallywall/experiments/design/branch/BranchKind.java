package org.tallywall.experiments.design.branch;

import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.experiments.design.DesignKind;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.strategies.catalog.Catalog;

/** Studies of the options at one decision. */
public final class BranchKind implements DesignKind {
  /** The kind. */
  public BranchKind() {}

  @Override
  public String name() {
    return BranchDesign.NAME;
  }

  @Override
  public List<String> fields() {
    return List.of("others", "seats");
  }

  @Override
  public boolean needsPrimary() {
    return true;
  }

  @Override
  public boolean stopsEarly() {
    return false;
  }

  @Override
  public PlayedDesign read(FieldReader study, Faults faults, Catalog catalog) {
    return new BranchReader(study, faults, catalog).read();
  }
}
