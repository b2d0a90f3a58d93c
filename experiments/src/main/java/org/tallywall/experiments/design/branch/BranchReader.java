package org.tallywall.experiments.design.branch;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;
import org.tallywall.experiments.design.PlayersReader;
import org.tallywall.experiments.study.Bounds;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Reads the design {@code branch}: each option of one decision, square by square. */
final class BranchReader {
  private static final List<String> KNOWN = List.of("at", "when", "line", "options", "player");

  private final FieldReader study;
  private final FieldReader fields;
  private final Faults faults;
  private final Catalog catalog;

  BranchReader(FieldReader study, Faults faults, Catalog catalog) {
    this.study = study;
    this.fields = new FieldReader(study.node("branch"), "\"branch\"", faults, KNOWN);
    this.faults = faults;
    this.catalog = catalog;
  }

  /** The design, or null where it has a fault. */
  BranchDesign read() {
    int before = faults.findings();
    PlayersReader common = new PlayersReader(study, faults, catalog);
    List<Integer> seats = common.seats();
    PlayerSpec others = study.has("others") ? common.others() : null;
    fields.require("player", "the studied player, as in \"player\": \"watchful\"");
    fields.require("at", "the kind of decision: " + String.join(", ", BranchMoment.names()));
    fields.require("when", "how positions are sorted, as in \"when\": {\"away\": [2, 3, 4]}");
    fields.require("options", "what is tried, as in \"options\": [\"own-need\", \"safest\"]");
    if (faults.findings() > before) {
      return null;
    }
    PlayerSpec player = common.fair(fields.node("player"));
    BranchMoment moment = moment();
    Cells cells = cells(moment);
    List<BranchChoice> options = new ChoiceReader(fields, faults, common, moment).read();
    return faults.findings() > before
        ? null
        : new BranchDesign(
            moment, cells, line(), options, player, others == null ? player : others, seats);
  }

  private Optional<String> line() {
    return fields.has("line") ? Optional.of(fields.text("line", "")) : Optional.empty();
  }

  private BranchMoment moment() {
    String text = fields.text("at", "");
    for (BranchMoment moment : BranchMoment.values()) {
      if (moment.text().equals(text)) {
        return moment;
      }
    }
    fields.fault(
        "at",
        "\"at\" is one of %s, not \"%s\"%s"
            .formatted(
                String.join(", ", BranchMoment.names()),
                text,
                Nearest.hint(text, BranchMoment.names())));
    return BranchMoment.DISCARD;
  }

  private Cells cells(BranchMoment moment) {
    Map<Feature, List<Integer>> values = new LinkedHashMap<>();
    FieldReader when = new FieldReader(fields.node("when"), "\"when\"", faults, Feature.names());
    for (String name : when.names()) {
      Arrays.stream(Feature.values())
          .filter(feature -> feature.text().equals(name))
          .findFirst()
          .ifPresent(feature -> values.put(feature, values(when, feature, moment)));
    }
    if (values.isEmpty()) {
      fields.fault(
          "when",
          "name at least one of " + String.join(", ", Feature.names(moment)) + " with its values");
    }
    long situations = 1;
    for (List<Integer> each : values.values()) {
      situations = Math.min(Bounds.MOST_SITUATIONS + 1L, situations * Math.max(1, each.size()));
    }
    if (situations > Bounds.MOST_SITUATIONS) {
      fields.fault(
          "when",
          "these values make more than " + Bounds.MOST_SITUATIONS + " situations; take fewer");
      return new Cells(Map.of());
    }
    return new Cells(values);
  }

  private List<Integer> values(FieldReader when, Feature feature, BranchMoment moment) {
    List<Integer> values = new ArrayList<>();
    if (!feature.isOf(moment)) {
      when.fault(
          feature.text(),
          "at a %s nothing is told apart by \"%s\"; take some of %s"
              .formatted(moment.text(), feature.text(), String.join(", ", Feature.names(moment))));
    }
    for (Node node : when.list(feature.text())) {
      if (!(node.value() instanceof BigDecimal number)
          || number.stripTrailingZeros().scale() > 0
          || number.compareTo(BigDecimal.valueOf(feature.least())) < 0
          || number.compareTo(BigDecimal.valueOf(feature.most())) > 0) {
        faults.fault(
            node.place(),
            "\"%s\" takes whole numbers from %s to %s"
                .formatted(feature.text(), feature.least(), feature.most()));
      } else if (values.contains(number.intValueExact())) {
        faults.fault(node.place(), "the value %s stands twice".formatted(number.toPlainString()));
      } else {
        values.add(number.intValueExact());
      }
    }
    if (values.isEmpty()) {
      when.fault(feature.text(), "\"%s\" takes one value or more".formatted(feature.text()));
    }
    if (feature == Feature.WALL) {
      values.sort((a, b) -> b - a);
    }
    return values;
  }
}
