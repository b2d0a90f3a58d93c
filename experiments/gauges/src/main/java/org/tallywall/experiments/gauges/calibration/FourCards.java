package org.tallywall.experiments.gauges.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.reports.markdown.MarkdownWriter;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** How well the same chances fit several cards, and how far off they may be on another. */
final class FourCards {
  /** Of risks only those are shown that are said to be so great. */
  private static final double LEAST_RISK = 0.02;

  private static final List<Kind> KINDS =
      List.of(
          new Kind("Hands, judged alone", "the own hand", OneCard::hands, 0),
          new Kind("Wins on a tile thrown", "a win on a tile thrown", OneCard::wins, LEAST_RISK),
          new Kind(
              "Exposures with a tile thrown",
              "an exposure with a tile thrown",
              OneCard::exposures,
              LEAST_RISK),
          new Kind(
              "Wins on a tile thrown, by all that can be seen",
              "a win on a tile thrown by all that can be seen",
              OneCard::allSeen,
              LEAST_RISK),
          new Kind(
              "Winning, by what the rest of the rack is worth",
              "winning by what the rest of the rack is worth",
              OneCard::hopes,
              0));

  private final List<OneCard> cards;

  FourCards(List<OneCard> cards) {
    this.cards = List.copyOf(cards);
  }

  private record Kind(String title, String words, Function<OneCard, Bins> bins, double least) {
    List<Bins.Row> rows(OneCard card) {
      return bins.apply(card).rows().stream().filter(row -> row.from() >= least).toList();
    }
  }

  /** A bin that is off, on a card. */
  private record Off(OneCard card, Bins.Row row) {
    /** By how much at least, in 100. */
    double surely() {
      Interval limits = row.limits();
      return 100 * Math.max(0, Math.max(row.said() - limits.high(), limits.low() - row.said()));
    }
  }

  /** How far off the chances may be on a card of one's own: one line. */
  String line() {
    List<String> parts = new ArrayList<>();
    for (Kind kind : KINDS) {
      parts.add(kind.words() + " " + furthest(kind));
    }
    return "**On a card of your own** the chances may be as far off as on the cards below, or"
        + " further. There, in 100, those furthest off beyond chance were of "
        + String.join("; of ", parts)
        + ".";
  }

  private String furthest(Kind kind) {
    Optional<Off> most = Optional.empty();
    for (OneCard card : cards) {
      for (Bins.Row row : kind.rows(card)) {
        Off off = new Off(card, row);
        if (most.isEmpty() || off.surely() > most.get().surely()) {
          most = Optional.of(off);
        }
      }
    }
    return most.map(off -> "(" + said(off.row()) + "; " + off.card().name() + ")").orElse("(none)");
  }

  private static String said(Bins.Row row) {
    return "said %s, happened %s, range %s to %s"
        .formatted(
            InHundred.size(100 * row.said()),
            InHundred.size(100 * row.happened()),
            InHundred.size(100 * row.limits().low()),
            InHundred.size(100 * row.limits().high()));
  }

  /** The net result and a table of each kind of chance. */
  String tables() {
    StringBuilder text = new StringBuilder();
    for (Kind kind : KINDS) {
      text.append("### ").append(kind.title()).append("\n\n").append(table(kind));
    }
    return text.toString();
  }

  private String table(Kind kind) {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("said", "The bin.").headed("said between"));
    for (int card = 0; card < cards.size(); card++) {
      columns.add(
          Column.decimalInterval("card-" + card, "in 100", "Said less happened.")
              .headed(cards.get(card).name()));
    }
    TableBuilder table = Table.builder("cards", kind.title()).columns(columns);
    List<Double> bins =
        cards.stream()
            .flatMap(card -> kind.rows(card).stream())
            .map(Bins.Row::from)
            .distinct()
            .sorted()
            .toList();
    for (double from : bins) {
      List<Cell> cells = new ArrayList<>();
      cells.add(Cell.text(named(kind, from)));
      cards.forEach(
          card -> cells.add(find(kind, card, from).map(FourCards::off).orElse(Cell.empty())));
      table.row(cells);
    }
    return MarkdownWriter.grid(table.build()).strip() + "\n\n";
  }

  private String named(Kind kind, double from) {
    Bins.Row row =
        cards.stream().flatMap(card -> find(kind, card, from).stream()).findFirst().orElseThrow();
    return InHundred.plain(100 * row.from()) + " to " + InHundred.plain(100 * row.to());
  }

  private static Optional<Bins.Row> find(Kind kind, OneCard card, double from) {
    return kind.rows(card).stream().filter(row -> row.from() == from).findFirst();
  }

  private static Cell off(Bins.Row row) {
    return Cell.interval(
        NetResult.off(row),
        100 * (row.said() - row.limits().high()),
        100 * (row.said() - row.limits().low()));
  }
}
