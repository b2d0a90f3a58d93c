package org.tallywall.experiments.design;

import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.strategies.catalog.Catalog;

/** A way of laying out games that a study file can ask for. */
public interface DesignKind {
  /**
   * The field of a study file that asks for it.
   *
   * @return as in {@code arms}
   */
  String name();

  /**
   * Fields of a study file that it reads besides.
   *
   * @return their names; a design that does not read them has no use for them
   */
  List<String> fields();

  /**
   * Whether a study must say which measure answers its question.
   *
   * @return true where something is compared
   */
  boolean needsPrimary();

  /**
   * Whether a study may stop before its last deal.
   *
   * @return true where looks at a comparison can end it
   */
  boolean stopsEarly();

  /**
   * Reads the design.
   *
   * @param study the study file, which has the field {@link #name}
   * @param faults takes what is wrong
   * @param catalog the players that can be named
   * @return the design, or null where it has a fault
   */
  PlayedDesign read(FieldReader study, Faults faults, Catalog catalog);
}
