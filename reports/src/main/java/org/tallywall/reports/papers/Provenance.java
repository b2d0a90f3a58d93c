package org.tallywall.reports.papers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Facts;
import org.tallywall.reports.results.PrettyJson;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.RuleColumns;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.tables.Pick;
import org.tallywall.reports.words.ChangedNumber;
import org.tallywall.reports.words.Stops;
import org.tallywall.reports.words.Unfinished;

/**
 * Where results come from. Nothing of the machine or the hour is among it, so that the same study
 * gives the same pages; those stand in {@code manifest.json}.
 */
public final class Provenance {
  private static final String GENERATOR =
      "PHILOX 4x64 of Apache Commons RNG, one stream per purpose";

  private final Results results;

  /**
   * What is said of where results come from.
   *
   * @param results what a results folder holds
   */
  public Provenance(Results results) {
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

  /**
   * What a reader has to know first.
   *
   * @return all of them, in their order
   */
  public List<Part> notices() {
    List<Part> notices = new ArrayList<>();
    Unfinished.notice(results).map(Part.Notice::new).ifPresent(notices::add);
    ChangedNumber.notice(results).map(Part.Notice::new).ifPresent(notices::add);
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

  /**
   * The study as it was played, without the rules, which have a table of their own.
   *
   * @return the part
   */
  public Part study() {
    Map<String, Object> fields = new LinkedHashMap<>(results.study().all());
    fields.remove("rules");
    fields.replace("card", results.manifest().text("card"));
    return new Part.Listing("The study with every setting", PrettyJson.text(fields));
  }

  /** Every switch of the rules; none where the folder does not have them. */
  Optional<Table> rules() {
    List<CsvFile.Row> rows = results.rows(RuleColumns.FILE);
    List<Pick> picks = RuleColumns.all().stream().map(column -> Pick.words(column)).toList();
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Pick.table(RuleColumns.FILE, "The rules of the table, every switch", picks, rows)
                .build());
  }
}
