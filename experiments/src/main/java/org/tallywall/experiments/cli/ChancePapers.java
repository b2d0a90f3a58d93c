package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.chances.words.Told;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.study.RulesFile;
import org.tallywall.reports.console.ConsoleWriter;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.html.PageWriter;
import org.tallywall.reports.markdown.DocumentWriter;
import org.tallywall.reports.svg.SvgWriter;
import org.tallywall.reports.text.Lettering;
import picocli.CommandLine.Option;

/** What every exact sum takes: the rules of the table, and files for its answer. */
final class ChancePapers {
  @Option(
      names = "--rules",
      paramLabel = "FILE",
      description = "A file of table rules, which say how many flowers and jokers there are.")
  private Path rules;

  @Option(names = "--md", paramLabel = "FILE", description = "Writes the answer as Markdown, too.")
  private Path markdown;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "Writes the numbers for a spreadsheet, too, with every digit.")
  private Path csv;

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description = "Writes a page with the answer and its chart, too.")
  private Path html;

  @Option(
      names = "--svg",
      paramLabel = "FILE",
      description = "Writes the chart as a picture, too, for a slide.")
  private Path svg;

  /** The rules in use. */
  TableRules rules() {
    return rules == null ? TableRules.STANDARD : RulesFile.read(rules);
  }

  /** Prints an answer and writes the files that were asked for. */
  void give(Told told, Console console) {
    List<Path> files = new ArrayList<>();
    for (Path file : new Path[] {markdown, csv, html, svg}) {
      if (file != null) {
        NewFile.refuseExisting(file);
        files.add(file.toAbsolutePath().normalize());
      }
    }
    Set<Path> different = new HashSet<>(files);
    if (different.size() < files.size()) {
      throw new WrongInputException("two options name the same file; give each its own");
    }
    Optional<Figure> chart = told.chart();
    if (svg != null && chart.isEmpty()) {
      throw new WrongInputException(
          "this answer has no chart for --svg; try a range, as in 20..80");
    }
    console
        .out()
        .print(
            ConsoleWriter.text(
                told.document(), figure -> Optional.empty(), console.width(), Lettering.UNICODE));
    if (!files.isEmpty()) {
      console.say("");
    }
    if (markdown != null) {
      NewFile.write(
          markdown, DocumentWriter.text(told.withoutChart(), figure -> Optional.empty()), console);
    }
    if (csv != null) {
      NewFile.write(csv, CsvWriter.text(told.table()), console);
    }
    if (html != null) {
      NewFile.write(html, PageWriter.text(told.document()), console);
    }
    if (svg != null) {
      NewFile.write(svg, SvgWriter.text(chart.orElseThrow()), console);
    }
  }
}
