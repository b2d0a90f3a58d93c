package org.tallywall.experiments.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Part;

/** A reading as paper: the same words and tables for a page, for notes and for the console. */
public final class ReadingPaper {
  private final Reading reading;
  private final ReadingWords words;
  private final ReadingTables tables;
  private final SeatNames seats;

  /**
   * The paper of a reading.
   *
   * @param reading what was seen
   * @param words its words
   * @param seats what the seats are called
   */
  public ReadingPaper(Reading reading, ReadingWords words, SeatNames seats) {
    this.reading = reading;
    this.words = words;
    this.seats = seats;
    tables = new ReadingTables(reading, words);
  }

  /**
   * The whole paper.
   *
   * @param title what the position is called
   * @param position sentences that read the position back
   * @return the document
   */
  public Document document(String title, List<String> position) {
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Part.Answer(
            words.first(),
            List.of(Part.Paragraph.of(words.tiles()), Part.Paragraph.of(words.basis()))));
    position.forEach(sentence -> parts.add(Part.Paragraph.of(sentence)));
    parts.add(new Part.Grid(tables.tiles(), Handles.COPY));
    List<String> safety = safety();
    if (!safety.isEmpty()) {
      parts.add(Part.Section.of("What makes tiles safe", new Part.Bullets(safety)));
    }
    parts.add(new Part.Chart(Danger.chart(reading, words.basis())));
    for (OpponentReading one : reading.opponents()) {
      parts.add(
          Part.Section.of(
              OpponentWords.upper(seats.of(one.seat())),
              Part.Paragraph.of(words.opponents().all(one)),
              new Part.Grid(tables.opponent(one), Handles.COPY)));
    }
    List<Part> methods = new ArrayList<>();
    words.methods().forEach(paragraph -> methods.add(Part.Paragraph.of(paragraph)));
    parts.add(Part.Section.of("How far to trust this", methods.toArray(new Part[0])));
    return new Document(title, parts);
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
