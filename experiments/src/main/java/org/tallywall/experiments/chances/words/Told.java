package org.tallywall.experiments.chances.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.table.Table;

/** An exact sum with all that is said of it. */
public final class Told {
  /** A longer table stands behind the chart. */
  private static final int MOST_BEFORE_CHART = 12;

  private final String title;
  private final String headline;
  private final List<String> more;
  private final Table brief;
  private final Table full;
  private final Optional<Figure> figure;
  private final How how;

  /**
   * Takes an answer.
   *
   * @param title what is asked
   * @param headline the answer in one sentence
   * @param more what follows from it, a sentence or two each
   * @param tables the numbers
   * @param figure the chart, where there is one
   * @param how the formula, its source, and what it takes for granted
   */
  Told(
      String title,
      String headline,
      List<String> more,
      Tables tables,
      Optional<? extends Figure> figure,
      How how) {
    this.title = title;
    this.headline = headline;
    this.more = List.copyOf(more);
    this.brief = tables.brief();
    this.full = tables.full();
    this.figure = figure.map(drawn -> drawn);
    this.how = how;
  }

  /**
   * The numbers of a sum.
   *
   * @param brief what people read
   * @param full every number in every digit
   */
  record Tables(Table brief, Table full) {
    /** One table for both. */
    static Tables of(Table table) {
      return new Tables(table, table);
    }
  }

  /**
   * The whole answer for readers.
   *
   * @return question, answer, table, chart, formula and source
   */
  public Document document() {
    return document(chart());
  }

  /**
   * The same without its chart, for a file that cannot hold one.
   *
   * @return question, answer, table, formula and source
   */
  public Document withoutChart() {
    return document(Optional.empty());
  }

  private Document document(Optional<Figure> chart) {
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Part.Answer(headline, more.stream().map(text -> Part.Paragraph.of(text)).toList()));
    List<Part> numbers = new ArrayList<>();
    numbers.add(new Part.Grid(brief, Handles.COPY));
    boolean isLong = brief.rows().size() > MOST_BEFORE_CHART;
    chart.ifPresent(drawn -> numbers.add(isLong ? 0 : 1, new Part.Chart(drawn)));
    parts.addAll(numbers);
    parts.addAll(how.parts());
    return new Document(title, parts);
  }

  /**
   * The chart.
   *
   * @return the chart; nothing where one number alone is the answer
   */
  public Optional<Figure> chart() {
    return figure;
  }

  /**
   * The numbers for a spreadsheet.
   *
   * @return every row, in every digit
   */
  public Table table() {
    return full;
  }
}
