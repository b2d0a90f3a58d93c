package org.tallywall.experiments.design;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.strategies.catalog.Catalog;

/** Reads how the games of a study are laid out: one of the designs that are known. */
public final class DesignReader {
  private final List<DesignKind> kinds;
  private final FieldReader fields;
  private final Faults faults;
  private final Catalog catalog;

  /**
   * A reader of a study.
   *
   * @param kinds the designs that are known
   * @param fields the study file
   * @param faults takes what is wrong
   * @param catalog the players that can be named
   */
  public DesignReader(List<DesignKind> kinds, FieldReader fields, Faults faults, Catalog catalog) {
    this.kinds = List.copyOf(kinds);
    this.fields = fields;
    this.faults = faults;
    this.catalog = catalog;
  }

  /**
   * Which design the study asks for.
   *
   * @return its kind; empty, and a fault, where it asks for none or for several
   */
  public Optional<DesignKind> kind() {
    List<DesignKind> written = kinds.stream().filter(kind -> fields.has(kind.name())).toList();
    if (written.size() > 1) {
      fields.fault(
          written.get(1).name(),
          "a study has one design; this one has "
              + written.stream().map(DesignKind::name).collect(Collectors.joining(" and ")));
      return Optional.empty();
    } else if (written.isEmpty()) {
      fields.require(
          "table",
          "who plays, as in \"table\": [\"nearest\", \"nearest\", \"nearest\", \"nearest\"]; or "
              + others());
      return Optional.empty();
    }
    return Optional.of(written.get(0));
  }

  private String others() {
    List<String> names =
        kinds.stream().map(DesignKind::name).filter(name -> !name.equals("table")).toList();
    int last = names.size() - 1;
    return String.join(", ", names.subList(0, last)) + " or " + names.get(last);
  }

  /**
   * Reads the design.
   *
   * @param kind what the study asks for
   * @return the design, or null where it has a fault
   */
  public PlayedDesign read(DesignKind kind) {
    for (String field : fieldsOf(kinds)) {
      if (fields.has(field) && !kind.fields().contains(field)) {
        fields.fault(
            field, "\"" + field + "\" has no meaning for a \"" + kind.name() + "\"; take it out");
      }
    }
    if (kind.needsPrimary()) {
      fields.require(
          "primary", "the measure that answers the question, as in \"primary\": \"points\"");
    }
    return kind.read(fields, faults, catalog);
  }

  /**
   * The fields that some design reads beside its own.
   *
   * @param kinds designs
   * @return each once
   */
  public static List<String> fieldsOf(List<DesignKind> kinds) {
    return kinds.stream().flatMap(kind -> kind.fields().stream()).distinct().toList();
  }
}
