package org.tallywall.experiments.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.reports.document.Fold;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.Figure;

/** The parts of a reading: the same words and tables for a page, for notes and for the console. */
public final class ReadingParts {
  private final Reading reading;
  private final ReadingWords words;
  private final ReadingTables tables;
  private final SeatNames seats;

  /**
   * The parts of a reading.
   *
   * @param reading what was seen
   * @param words its words
   * @param seats what the seats are called
   */
  public ReadingParts(Reading reading, ReadingWords words, SeatNames seats) {
    this.reading = reading;
    this.words = words;
    this.seats = seats;
    tables = new ReadingTables(reading, words);
  }

  /**
   * What is said first.
   *
   * @return the answer
   */
  public Part answer() {
    return new Part.Answer(
        words.first(), List.of(Part.Paragraph.of(words.tiles()), Part.Paragraph.of(words.basis())));
  }

  /**
   * The chart of danger.
   *
   * @return a figure
   */
  public Figure chart() {
    return Danger.chart(reading, words.basis());
  }

  /**
   * Everything below the answer and the position.
   *
   * @return tables, chart and sentences
   */
  public List<Part> rest() {
    List<Part> parts = new ArrayList<>();
    parts.add(new Part.Grid(tables.tiles(), Handles.COPY));
    List<String> safety = safety();
    if (!safety.isEmpty()) {
      parts.add(Part.Section.of("What makes tiles safe", new Part.Bullets(safety)));
    }
    parts.add(new Part.Chart(chart()));
    for (OpponentReading one : reading.opponents()) {
      List<Part> section = new ArrayList<>();
      section.add(Part.Paragraph.of(words.opponents().all(one)));
      if (!one.lines().isEmpty() && !reading.view().dead(one.seat())) {
        section.add(new Part.Grid(tables.opponent(one), Handles.COPY));
      }
      String title = OpponentWords.upper(seats.of(one.seat()));
      parts.add(new Part.Section(title, Fold.FIXED, section));
    }
    List<Part> methods = new ArrayList<>();
    words.methods().forEach(paragraph -> methods.add(Part.Paragraph.of(paragraph)));
    parts.add(new Part.Section("How far to trust this", Fold.FIXED, methods));
    return parts;
  }

  /** What makes tiles safe, those together of which the same is said. */
  private List<String> safety() {
    Map<String, List<String>> kinds = new LinkedHashMap<>();
    for (TileReading tile : reading.tiles()) {
      for (String fact : words.safety().facts(tile)) {
        add(kinds, "a fact: " + fact, tile);
      }
      for (String evidence : words.safety().evidence(tile)) {
        add(kinds, "evidence only: " + evidence, tile);
      }
    }
    List<String> items = new ArrayList<>();
    kinds.forEach((what, tiles) -> items.add(String.join(", ", tiles) + " – " + what + "."));
    return items;
  }

  private static void add(Map<String, List<String>> kinds, String what, TileReading tile) {
    kinds.computeIfAbsent(what, none -> new ArrayList<>()).add(Tile.symbol(tile.kind()));
  }
}
