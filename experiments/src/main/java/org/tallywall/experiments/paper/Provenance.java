package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.results.Facts;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * Where results come from. Nothing of the machine or the hour is among it, so that the same study
 * gives the same pages; those stand in {@code manifest.json}.
 */
final class Provenance {
  private static final String GENERATOR = "PHILOX 4x64 of Apache Commons RNG, a stream a purpose";

  private final Results results;

  Provenance(Results results) {
    this.results = results;
  }

  List<Part.Fact> facts() {
    Facts manifest = results.manifest();
    List<Part.Fact> facts = new ArrayList<>();
    facts.add(new Part.Fact("Study", results.name() + ", " + manifest.text("study-digest")));
    facts.add(new Part.Fact("Card", manifest.text("card") + ", " + manifest.text("card-digest")));
    facts.add(new Part.Fact("Rules", manifest.text("rules-digest")));
    facts.add(
        new Part.Fact(
            "Deals",
            "%s, %s; seed %s"
                .formatted(
                    CellText.grouped(Long.toString(results.deals())),
                    Stops.of(results).map(Stops::deals).orElse("the first is deal 0"),
                    seed())));
    facts.add(
        new Part.Fact(
            "Program",
            "Tallywall %s; random numbers: %s, version %s"
                .formatted(
                    manifest.text("tallywall"),
                    GENERATOR,
                    manifest.number("stream-version").map(Object::toString).orElse("unknown"))));
    facts.add(new Part.Fact("Day and machine", "in manifest.json beside this page"));
    return facts;
  }

  private String seed() {
    return results.manifest().number("seed").map(n -> n.toPlainString()).orElse("unknown");
  }

  /** All of it in one line, for a footnote. */
  String footnote() {
    List<String> parts = new ArrayList<>();
    facts().forEach(fact -> parts.add(fact.name() + ": " + fact.value()));
    return String.join(". ", parts) + ".";
  }

  /** What a reader has to know first. */
  List<Part> notices() {
    List<Part> notices = new ArrayList<>();
    Map<String, Object> derived = results.manifest().object("derived");
    if (!derived.isEmpty()) {
      notices.add(
          new Part.Notice(
              "Derived study: played "
                  + (derived.containsKey("card") ? "on another card" : "")
                  + (derived.size() > 1 ? " and " : "")
                  + (derived.containsKey("rules") ? "by other rules" : "")
                  + " than the study file says."));
    }
    results.remarks().forEach(remark -> notices.add(new Part.Notice(remark)));
    return notices;
  }

  /** The study as it was played, without the rules, which have a table of their own. */
  Part study() {
    Map<String, Object> fields = new LinkedHashMap<>(results.study().all());
    fields.remove("rules");
    fields.replace("card", results.manifest().text("card"));
    return new Part.Listing("The study with every setting", StudyJson.pretty(fields));
  }

  /** Every switch of the rules. */
  Table rules() {
    Map<String, Object> usual = TableRules.STANDARD.switches();
    TableBuilder table =
        Table.builder("rules", "The rules of the table, every switch")
            .columns(
                Column.text("switch", "The switch."),
                Column.text("value", "How it was played."),
                Column.text("usual", "How it is where a study says nothing."),
                Column.text("changed", "Whether the two differ."));
    results
        .study()
        .object("rules")
        .forEach(
            (name, value) -> {
              String played = String.valueOf(value);
              String standard = usual.containsKey(name) ? String.valueOf(usual.get(name)) : "";
              table.row(
                  Cell.text(name),
                  Cell.text(played),
                  Cell.text(standard),
                  Cell.text(played.equals(standard) ? "" : "changed"));
            });
    return table.build();
  }
}
