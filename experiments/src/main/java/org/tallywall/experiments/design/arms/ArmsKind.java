package org.tallywall.experiments.design.arms;

import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.experiments.design.DesignKind;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.strategies.catalog.Catalog;

/** Studies that compare ways of playing. */
public final class ArmsKind implements DesignKind {
  /** The kind. */
  public ArmsKind() {}

  @Override
  public String name() {
    return ArmsDesign.NAME;
  }

  @Override
  public List<String> fields() {
    return List.of("baseline", "others", "seats", "streams");
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
    return new ArmsReader(study, faults, catalog).read();
  }
}
