package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Place;
import org.tallywall.core.text.Shown;

/** Reads a card from the CSV that a spreadsheet saves into a draft. */
final class CsvCardReader {
  private static final List<String> COLUMNS =
      List.of(
          "family",
          "id",
          "tiles",
          "slide",
          "where",
          "suits",
          "value",
          "concealed",
          "jokers",
          "jokerless",
          "say");

  /** A whole number, also as a cell for money shows it. */
  private static final Pattern VALUE = Pattern.compile("\\$? ?([0-9]{1,9})(?:[.,]0{1,2})? ?¢?");

  private static final Map<String, Boolean> FLAGS =
      Map.of("true", true, "false", false, "yes", true, "no", false);

  private final Faults faults;
  private final CardRoom room;
  private final Map<String, Integer> columns = new HashMap<>();

  /** How the first row writes each column. */
  private final Map<String, String> written = new HashMap<>();

  private final List<String> families = new ArrayList<>();
  private final List<List<Typed>> lineRows = new ArrayList<>();
  private final List<LineDraft> lines = new ArrayList<>();

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
    header(rows.get(0));
    if (faults.any()) {
      return null;
    }
    for (List<Typed> row : rows.subList(1, rows.size())) {
      if (!room.forLine(lines, row.get(0).place())) {
        break;
      }
      begin(row);
    }
    String called = room.name(name, "the card's name", Place.FILE);
    CardDraft draft = new CardDraft(called, "", families, lines);
    LineIds.fill(draft, faults);
    for (int at = 0; at < lines.size(); at++) {
      line(lineRows.get(at), lines.get(at));
    }
    return draft;
  }

  private void header(List<Typed> row) {
    for (int at = 0; at < row.size(); at++) {
      String typed = row.get(at).text().strip().toLowerCase(Locale.ROOT);
      if (typed.isEmpty()) {
        continue;
      }
      String column = CardWords.COLUMNS.getOrDefault(typed, typed);
      String before = written.putIfAbsent(column, typed);
      if (!COLUMNS.contains(column)) {
        faults.fault(
            row.get(at).place(),
            "unknown column \"" + Shown.word(column) + "\"" + faults.advice(column, COLUMNS));
      } else if (columns.putIfAbsent(column, at) != null) {
        faults.fault(
            row.get(at).place(),
            typed.equals(before)
                ? "the column \"" + column + "\" is there twice"
                : "the columns " + FieldReader.twice(before, typed));
      }
    }
    for (String needed : List.of("family", "tiles", "value")) {
      if (!columns.containsKey(needed)) {
        faults.fault(
            row.get(0).place(), "the column \"" + needed + "\" is missing in the first row");
      }
    }
  }

  private void begin(List<Typed> row) {
    if (!familyOf(row)) {
      return;
    }
    LineDraft draft = new LineDraft(family, row.get(0).place());
    Typed id = cell(row, "id");
    if (id != null) {
      draft.id = room.name(id.text().strip(), "an id", id.place());
      draft.idPlace = id.place();
    }
    lineRows.add(row);
    lines.add(draft);
  }

  /** Takes a row's family, or leaves that of the rows above; false where there is none. */
  private boolean familyOf(List<Typed> row) {
    Typed cell = cell(row, "family");
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
      if (!columns.containsValue(at) && !row.get(at).text().isBlank()) {
        faults.fault(
            row.get(at).place(),
            draft.id,
            String.format(
                Locale.ROOT,
                "\"%s\" is under no column; put a cell that contains a separator in quotes",
                Shown.word(row.get(at).text().strip())));
      }
    }
    Typed say = cell(row, "say");
    draft.say = say == null ? "" : room.name(say.text(), "\"say\"", say.place());
    Typed tiles = cell(row, "tiles");
    if (tiles == null) {
      faults.fault(draft.place, draft.id, "the line has no tiles; write one hand of 14 tiles");
    } else {
      alternatives(tiles, draft);
    }
    draft.slide = folded(row, "slide", draft.slide);
    Typed where = cell(row, "where");
    draft.where = where == null ? draft.where : room.hand(where, "\"where\"");
    draft.suits = folded(row, "suits", draft.suits);
    draft.value = value(row, draft);
    draft.concealed = Boolean.TRUE.equals(flag(row, "concealed", false, draft));
    draft.jokers = Boolean.TRUE.equals(flag(row, "jokers", true, draft));
    draft.jokerless = flag(row, "jokerless", null, draft);
  }

  private Typed cell(List<Typed> row, String column) {
    Integer at = columns.get(column);
    return at == null || at >= row.size() || row.get(at).text().isBlank() ? null : row.get(at);
  }

  private Typed folded(List<Typed> row, String column, Typed otherwise) {
    Typed cell = cell(row, column);
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

  private long value(List<Typed> row, LineDraft draft) {
    Typed cell = cell(row, "value");
    String text = cell == null ? "" : cell.text().strip();
    Matcher money = VALUE.matcher(text);
    long value = money.matches() ? Long.parseLong(money.group(1)) : 0;
    if (value < 1 || value > CardLimits.MOST_VALUE) {
      faults.fault(
          cell == null ? draft.place : cell.place(),
          draft.id,
          String.format(
              Locale.ROOT,
              "\"%s\" is a whole number from 1 to %d, not \"%s\"",
              written.get("value"),
              CardLimits.MOST_VALUE,
              Shown.word(text)));
      return 1;
    }
    return value;
  }

  private Boolean flag(List<Typed> row, String column, Boolean otherwise, LineDraft draft) {
    Typed cell = cell(row, column);
    if (cell == null) {
      return otherwise;
    }
    String word = cell.text().strip().toLowerCase(Locale.ROOT);
    if (column.equals("concealed") && (word.equals("c") || word.equals("x"))) {
      return word.equals("c");
    }
    Boolean flag = FLAGS.get(word);
    if (flag == null) {
      faults.fault(
          cell.place(),
          draft.id,
          String.format(
              Locale.ROOT,
              "\"%s\" is TRUE or FALSE, yes or no%s; not \"%s\"",
              column,
              column.equals("concealed") ? ", C or X" : "",
              Shown.word(cell.text().strip())));
      return otherwise;
    }
    return flag;
  }
}
