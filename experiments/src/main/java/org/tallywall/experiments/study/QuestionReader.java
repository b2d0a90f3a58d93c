package org.tallywall.experiments.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.Shown;

/** Reads what a study wants to know. */
public final class QuestionReader {
  private static final double USUAL_CONFIDENCE = 0.95;

  /** Names that cannot be those of files on Windows, whatever follows behind a dot. */
  private static final String DEVICE = "(?i)(con|prn|aux|nul|com[0-9]|lpt[0-9])([.].*)?";

  private static final String NAME = "[A-Za-z0-9][A-Za-z0-9_-]{0,79}";

  private final FieldReader fields;

  /**
   * A reader of a study's question.
   *
   * @param fields the study file
   */
  public QuestionReader(FieldReader fields) {
    this.fields = fields;
  }

  /**
   * Reads the question.
   *
   * @return the question; of no use where it has a fault
   */
  public StudyQuestion read() {
    String name = "";
    if (fields.require("study", "a name, as in \"study\": \"first-look\"")) {
      name = fields.text("study", "x");
      if (!name.matches(NAME)) {
        fields.fault(
            "study",
            "the name \"%s\" becomes the name of a folder; write letters a-z, digits and hyphens,"
                    .formatted(Shown.word(name))
                + " 80 at most");
      } else if (name.matches(DEVICE)) {
        fields.fault(
            "study",
            "the name \""
                + name
                + "\" becomes the name of a folder, which Windows keeps for a device; write another");
      }
    }
    double confidence = fields.between("confidence", USUAL_CONFIDENCE, 0, 1);
    Optional<Measure> primary = primary();
    return new StudyQuestion(
        name, fields.text("question", ""), primary, secondary(primary), confidence);
  }

  private Optional<Measure> primary() {
    return fields.has("primary") ? measure("primary", fields.node("primary")) : Optional.empty();
  }

  private List<Measure> secondary(Optional<Measure> primary) {
    List<Measure> measures = new ArrayList<>();
    for (Node node : fields.list("secondary")) {
      measure("secondary", node).ifPresent(measures::add);
    }
    primary.ifPresent(measure -> refuseTwice(measure, measures));
    measures.forEach(measure -> refuseTwice(measure, others(measures, measure)));
    return measures.stream().distinct().toList();
  }

  private static List<Measure> others(List<Measure> measures, Measure first) {
    return measures.subList(measures.indexOf(first) + 1, measures.size());
  }

  private void refuseTwice(Measure measure, List<Measure> others) {
    if (others.contains(measure)) {
      fields.fault(
          "secondary",
          "the measure \"%s\" is named twice; once is enough".formatted(measure.text()));
    }
  }

  private Optional<Measure> measure(String field, Node node) {
    List<String> names = Measure.names();
    if (node.value() instanceof String text) {
      int at = names.indexOf(text);
      if (at >= 0) {
        return Optional.of(Measure.values()[at]);
      }
      fields.fault(field, "unknown measure \"%s\"%s".formatted(text, Nearest.advice(text, names)));
    } else {
      fields.fault(field, "a measure is a name in double quotes, not " + node.kind());
    }
    return Optional.empty();
  }
}
