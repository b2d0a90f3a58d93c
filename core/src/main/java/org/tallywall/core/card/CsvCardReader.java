package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Place;
import org.tallywall.core.text.Shown;

/** Reads a card from the CSV that a spreadsheet saves into a draft. */
final class CsvCardReader {
  private final Faults faults;
  private final CardRoom room;
  private final List<String> families = new ArrayList<>();
  private final List<List<Typed>> lineRows = new ArrayList<>();
  private final List<LineDraft> lines = new ArrayList<>();

  private CsvColumns columns;
  private CsvFlags flags;

  /** The family of the row that was read last. */
  private String family;

  /**
   * A reader.
   *
   * @param faults takes the faults
   */
  CsvCardReader(Faults faults) {
    this.faults = faults;
    this.room = new CardRoom(faults);
  }

  /**
   * Reads the text of a file.
   *
   * @param name what the card is called
   * @param text the whole file
   * @return the draft, or null where the text is no such table
   */
  CardDraft read(String name, String text) {
    List<List<Typed>> rows = CsvCells.read(text, faults);
    rows.removeIf(row -> row.stream().allMatch(cell -> cell.text().isBlank()));
    if (rows.isEmpty()) {
      if (!faults.any()) {
        faults.fault(Place.FILE, "the file is empty; its first row names the columns");
      }
      return null;
    }
    columns = new CsvColumns(rows.get(0), faults);
    if (faults.any()) {
      return null;
    }
    flags = new CsvFlags(columns, rows.subList(1, rows.size()), faults);
    for (List<Typed> row : rows.subList(1, rows.size())) {
      if (!room.forLine(lines, row.get(0).place())) {
        break;
      }
      if (!columns.only(row, "card")) {
        begin(row);
      }
    }
    Typed title = title(name, rows.subList(1, rows.size()));
    String called = room.name(title.text(), "the card's name", title.place());
    CardDraft draft = new CardDraft(called, "", families, lines);
    LineIds.fill(draft, faults);
    for (int at = 0; at < lines.size(); at++) {
      line(lineRows.get(at), lines.get(at));
    }
    return draft;
  }

  /** The first cell of the column for the card's title, or the name of the file. */
  private Typed title(String name, List<List<Typed>> rows) {
    Typed title = null;
    for (List<Typed> row : rows) {
      Typed cell = columns.cell(row, "card");
      if (cell != null && title == null) {
        title = new Typed(cell.text().strip(), cell.place());
      } else if (cell != null && !cell.text().strip().equals(title.text())) {
        faults.fault(
            cell.place(),
            "the card has a title further up; leave this cell empty, or write the same");
      }
    }
    return title == null ? new Typed(name, Place.FILE) : title;
  }

  private void begin(List<Typed> row) {
    if (!familyOf(row)) {
      return;
    }
    LineDraft draft = new LineDraft(family, row.get(0).place());
    Typed id = columns.cell(row, "id");
    if (id != null) {
      draft.id = room.name(id.text().strip(), "an id", id.place());
      draft.idPlace = id.place();
    }
    lineRows.add(row);
    lines.add(draft);
  }

  /** Takes a row's family, or leaves that of the rows above; false where there is none. */
  private boolean familyOf(List<Typed> row) {
    Typed cell = columns.cell(row, "family");
    if (cell == null) {
      if (family == null) {
        faults.fault(row.get(0).place(), "no family is named in this row or above; write one");
      }
      return family != null;
    }
    String name = room.name(cell.text().strip(), "a family's name", cell.place());
    if (!families.contains(name)) {
      if (!room.forFamily(families, cell.place())) {
        return false;
      }
      families.add(name);
    }
    family = name;
    return true;
  }

  private void line(List<Typed> row, LineDraft draft) {
    for (int at = 0; at < row.size(); at++) {
      if (!columns.has(at) && !row.get(at).text().isBlank()) {
        faults.fault(
            row.get(at).place(),
            draft.id,
            String.format(
                Locale.ROOT,
                "\"%s\" is under no column; put a cell that contains a separator in quotes",
                Shown.word(row.get(at).text().strip())));
      }
    }
    Typed say = columns.cell(row, "say");
    draft.say = say == null ? "" : room.name(say.text(), "\"say\"", say.place());
    Typed tiles = columns.cell(row, "tiles");
    if (tiles == null) {
      faults.fault(draft.place, draft.id, "the line has no tiles; write one hand of 14 tiles");
    } else {
      alternatives(tiles, draft);
    }
    draft.slide = folded(row, "slide", draft.slide);
    Typed where = columns.cell(row, "where");
    draft.where = where == null ? draft.where : room.hand(where, "\"where\"");
    draft.suits = folded(row, "suits", draft.suits);
    draft.value = new CsvValue(columns, faults).of(row, draft);
    draft.concealed = Boolean.TRUE.equals(flags.of(row, "concealed", false, draft));
    draft.jokers = Boolean.TRUE.equals(flags.of(row, "jokers", true, draft));
    draft.jokerless = flags.of(row, "jokerless", null, draft);
  }

  private Typed folded(List<Typed> row, String column, Typed otherwise) {
    Typed cell = columns.cell(row, column);
    return cell == null
        ? otherwise
        : new Typed(cell.text().strip().toLowerCase(Locale.ROOT), cell.place());
  }

  private void alternatives(Typed tiles, LineDraft draft) {
    int depth = 0;
    int start = 0;
    String text = tiles.text();
    for (int at = 0; at <= text.length(); at++) {
      char letter = at == text.length() ? '|' : text.charAt(at);
      depth += letter == '(' ? 1 : letter == ')' ? -1 : 0;
      if (letter == '|' && (depth <= 0 || at == text.length())) {
        Typed hand = new Typed(text.substring(start, at), tiles.place().plus(start));
        draft.tiles.add(room.hand(hand, "a hand"));
        start = at + 1;
      }
    }
  }
}
