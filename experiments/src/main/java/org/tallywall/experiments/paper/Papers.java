package org.tallywall.experiments.paper;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tallywall.experiments.error.StoppedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.store.PaperShelf;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.charts.Charts;
import org.tallywall.reports.console.ConsoleWriter;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Link;
import org.tallywall.reports.document.Pictures;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.html.FragmentWriter;
import org.tallywall.reports.html.PageWriter;
import org.tallywall.reports.markdown.DocumentWriter;
import org.tallywall.reports.papers.Notes;
import org.tallywall.reports.papers.ReportPage;
import org.tallywall.reports.png.PngResult;
import org.tallywall.reports.png.PngWriter;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.svg.SvgWriter;
import org.tallywall.reports.text.Lettering;

/** Makes all papers of a results folder, from the folder alone. */
public final class Papers {
  private static final String CHARTS = "charts";

  private final Results results;
  private final PaperOptions options;
  private final List<String> remarks = new ArrayList<>();
  private final PaperShelf shelf;

  private Papers(Results results, PaperOptions options) {
    this.shelf = PaperShelf.in(results.folder());
    this.results = results;
    this.options = options;
  }

  /**
   * Writes papers into a results folder, in place of older ones. A paper that somebody has changed
   * since it was made is kept under another name.
   *
   * @param folder the results folder
   * @param options what is to be made
   * @return what could not be made, a sentence each; empty if all is there
   * @throws WrongInputException if there are no results, or they are damaged, or the card is asked
   *     for and cannot be had
   * @throws StoppedException if the user wants no more of them
   */
  public static List<String> write(Path folder, PaperOptions options) {
    Papers papers = new Papers(ResultsFolder.read(folder, options.program()), options);
    papers.write();
    papers.remarks.addAll(papers.shelf.kept());
    return papers.remarks;
  }

  /**
   * The notes of a results folder as lines for a console.
   *
   * @param folder the results folder
   * @param version the version of this program
   * @param width the most letters in a line
   * @return lines, each ended by a line feed
   * @throws org.tallywall.reports.results.WrongResultsException if there are no results, or they
   *     are damaged
   */
  public static String forConsole(Path folder, String version, int width) {
    PaperOptions options = PaperOptions.everything(version);
    Document notes = Notes.of(ResultsFolder.read(folder, options.program()));
    boolean drawn = Files.isDirectory(folder.resolve(CHARTS));
    Pictures beside = drawn ? Pictures.in(CHARTS, "svg") : figure -> Optional.empty();
    return ConsoleWriter.text(notes, beside, width, Lettering.UNICODE);
  }

  private void write() {
    StudyCard card = StudyCard.of(results);
    if (options.withCard() && card.card().isEmpty()) {
      throw new WrongInputException("--with-card: " + card.trouble());
    }
    List<Figure> figures = Charts.of(results);
    GamePages games = new GamePages(results, card, options.trustJars());
    if (options.wants(PaperFormat.GAMES) || options.wants(PaperFormat.PAGE)) {
      games.read();
    }
    boolean pictures = options.wants(PaperFormat.CHARTS) && charts(figures);
    if (options.wants(PaperFormat.NOTES)) {
      notes(pictures);
    }
    List<Link> links = options.wants(PaperFormat.GAMES) ? games.write(this::write) : games.links();
    if (options.wants(PaperFormat.GAMES) && games.records().isPresent() && card.card().isEmpty()) {
      remarks.add("no pages of games: " + card.trouble());
    }
    games.silent().filter(why -> options.wants(PaperFormat.GAMES)).ifPresent(remarks::add);
    if (options.wants(PaperFormat.PAGE)) {
      Map<String, String> lines = options.withCard() ? card.lines() : Map.of();
      Document page = new ReportPage(results, lines, links).document();
      write("report.html", PageWriter.text(page));
    }
  }

  private void notes(boolean pictures) {
    Document notes = Notes.of(results);
    boolean there = pictures || Files.isDirectory(results.folder().resolve(CHARTS));
    String ending = pictures ? "png" : "svg";
    Pictures beside = there ? Pictures.in(CHARTS, ending) : figure -> Optional.empty();
    write("notes.md", DocumentWriter.text(notes, beside));
    write("notes.html", FragmentWriter.text(notes, beside));
  }

  /** Draws the charts; false where this machine cannot draw PNG pictures. */
  private boolean charts(List<Figure> figures) {
    boolean drawn = true;
    for (Figure figure : figures) {
      String stem = figure.caption().stem();
      String svg = SvgWriter.text(figure);
      write(CHARTS + "/" + stem + ".svg", svg);
      PngResult picture = drawn ? PngWriter.draw(svg) : null;
      if (picture instanceof PngResult.Drawn dots) {
        shelf.write(CHARTS + "/" + stem + ".png", dots.bytes());
      } else if (picture instanceof PngResult.NotDrawn why) {
        remarks.add(why.reason());
        drawn = false;
      }
    }
    return drawn;
  }

  private void write(String name, String text) {
    goOn();
    shelf.write(name, text);
  }

  private void goOn() {
    if (options.stop().getAsBoolean()) {
      throw new StoppedException(
          "stopped while papers were made; all numbers are there, and the papers are made by:"
              + " tallywall report "
              + Words.typed(results.folder().toString()));
    }
  }
}
