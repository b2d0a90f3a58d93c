package org.tallywall.experiments.club;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.Family;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Fold;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.reports.words.Wording;

/** What a club's tally says, in words and tables. */
public final class ClubWords {
  private static final double CONFIDENCE = 0.95;
  private static final double UNLIKELY = 0.05;

  /** Odds at which evidence counts as strong, and as worth a mention (Kass and Raftery). */
  private static final double STRONG = 20;

  private static final double POSITIVE = 3;
  private static final double MOST_ODDS = 1_000;
  private static final int HUNDRED = 100;

  private final ClubAnswer answer;
  private final Card card;

  /**
   * Words for an answer.
   *
   * @param answer the answer
   * @param card the card of the club
   */
  public ClubWords(ClubAnswer answer, Card card) {
    this.answer = answer;
    this.card = card;
  }

  /**
   * The answer for readers.
   *
   * @return sentence, tables, how it was computed
   */
  public Document document() {
    return new Document(
        "Which table is most like ours?",
        List.of(
            new Part.Answer(headline(), paragraphs()),
            new Part.Grid(tables(), Handles.COPY),
            new Part.Grid(measures(), Handles.COPY),
            new Part.Section("How this was computed", Fold.FIXED, List.of(new Part.Bullets(how()))),
            new Part.Notice(Wording.CAUTION)));
  }

  /** The answer in a sentence. */
  String headline() {
    ClubAnswer.Standing best = answer.best();
    ClubAnswer.Standing next = answer.next();
    double odds = best.share() / StrictMath.max(next.share(), Double.MIN_NORMAL);
    String four = "four players of the kind \"%s\"";
    if (odds < POSITIVE) {
      return ("Your tally is most like a table of "
              + four
              + ", but a table of \"%s\" fits it nearly as well.")
          .formatted(best.kind(), next.kind());
    }
    String sure = odds >= STRONG ? "clearly " : "";
    String times = odds >= MOST_ODDS ? "more than 1,000" : String.valueOf(StrictMath.round(odds));
    return ("Of the tables tried, your tally is %smost like "
            + four
            + ": it is %s times as likely there as at a table of \"%s\", the next.")
        .formatted(sure, best.kind(), times, next.kind());
  }

  private List<Part.Paragraph> paragraphs() {
    List<Part.Paragraph> all = new ArrayList<>();
    all.add(Part.Paragraph.of(fit()));
    all.add(Part.Paragraph.of(enough()));
    return all;
  }

  /** Whether the club differs from the best table by more than chance. */
  String fit() {
    String kind = answer.best().kind();
    String chance = inHundred(answer.chanceOfAsFar());
    if (answer.chanceOfAsFar() >= UNLIKELY) {
      return ("It lies no further from that table than chance often brings about: of the tallies that a table of"
              + " \"%s\" fills itself, %s in 100 lie as far from it.")
          .formatted(kind, chance);
    }
    return ("But even this table differs from yours: of the tallies that a table of \"%s\" fills itself,"
            + " only %s in 100 lie as far from it. What stands out most is %s.")
        .formatted(kind, chance, furthest());
  }

  private String furthest() {
    String found = "";
    double most = -1;
    for (Measured one : measured()) {
      double share = one.table().share();
      double expected = share * one.club().trials();
      double spread =
          StrictMath.sqrt(
              expected * (1 - share) * (1 + (double) one.club().trials() / one.table().trials()));
      double off = StrictMath.abs(one.club().successes() - expected) / StrictMath.max(spread, 0.5);
      if (off > most) {
        most = off;
        found =
            "%s: %s, where such a table has %s"
                .formatted(one.what(), inHundred(one.club().share()), inHundred(share) + " in 100");
      }
    }
    return found;
  }

  /** How far so many games can tell. */
  String enough() {
    String best = answer.best().kind();
    String next = answer.next().kind();
    String games = Words.count(answer.tally().games(), "game", "games");
    String often = inHundred(answer.apart());
    if (answer.apart() >= Telling.OFTEN) {
      String between =
          answer.best().share() < POSITIVE * answer.next().share()
              ? " Yours lies between them, as few tallies of either do."
              : "";
      return "%s, counted as you did, are enough to tell \"%s\" from \"%s\": a tally that either fills is given to the right one of the two in at least %s of 100."
              .formatted(games, best, next, often)
          + between;
    }
    String few =
        "%s, counted as you did, are too few to tell \"%s\" from \"%s\": a tally that one of them fills is given to the right one of the two in as few as %s of 100, where a coin has 50."
            .formatted(games, best, next, often);
    return few
        + (answer.needed().isPresent()
            ? " It takes about %s games to be right in 90 of 100."
                .formatted(Words.grouped(answer.needed().getAsInt()))
            : " Even as many as were played at each table (%s) would not do."
                .formatted(Words.grouped(answer.best().cells().games())));
  }

  /**
   * The tables tried, for readers and spreadsheets.
   *
   * @return the most like first
   */
  public Table tables() {
    TableBuilder table =
        Table.builder("club-tables", "The tables tried, the most like first")
            .columns(
                Column.text("table", "Who plays there, four of a kind.").headed("four of a kind"),
                Column.rate(
                        "share",
                        "share of cases",
                        "How likely this table is, were the club one of these and each as likely as the next before.")
                    .headed("how likely, were it one of these"),
                Column.rateInterval("wall-games", "share of games", "Games that nobody won.")
                    .headed("wall games"),
                Column.rateInterval(
                        "self-picked", "share of wins", "Wins that were no discard of another.")
                    .headed("self-picked, of wins"),
                Column.rate(
                        "named-right",
                        "share of tallies",
                        "Of tallies that this table fills, with as many games as the club's, how many are said to be its own.")
                    .headed("a tally of its own is named right"));
    for (ClubAnswer.Standing one : answer.standings()) {
      GameCells cells = one.cells();
      table.row(
          List.of(
              Cell.text(one.kind()),
              Cell.decimal(one.share()),
              share(new Proportion(cells.wallGames(), cells.games())),
              cells.wins() == 0
                  ? Cell.empty()
                  : share(new Proportion(cells.selfPicked(), cells.wins())),
              Cell.decimal((double) one.right() / Telling.TALLIES)));
    }
    return table.build();
  }

  /** What was counted, beside the table that is most like it. */
  Table measures() {
    TableBuilder table =
        Table.builder("club-measures", "Your club beside that table")
            .columns(
                Column.text("what", "What was counted.").headed("counted"),
                Column.rateInterval("club", "share", "At the club, with what chance leaves open.")
                    .headed("your club"),
                Column.rateInterval("table", "share", "At the table that is most like it.")
                    .headed("four of \"" + answer.best().kind() + "\""));
    for (Measured one : measured()) {
      table.row(List.of(Cell.text(one.what()), share(one.club()), share(one.table())));
    }
    return table.build();
  }

  private record Measured(String what, Proportion club, Proportion table) {}

  private List<Measured> measured() {
    ClubTally tally = answer.tally();
    GameCells cells = answer.best().cells();
    List<Measured> all = new ArrayList<>();
    tally
        .wallGames()
        .ifPresent(
            walls ->
                all.add(
                    new Measured(
                        "wall games in 100 games",
                        new Proportion(walls, tally.games()),
                        new Proportion(cells.wallGames(), cells.games()))));
    if (tally.selfPicked().isPresent() && tally.wins() > 0 && cells.wins() > 0) {
      all.add(
          new Measured(
              "self-picked of 100 wins",
              new Proportion(tally.selfPicked().getAsInt(), tally.wins()),
              new Proportion(cells.selfPicked(), cells.wins())));
    }
    long[] families = cells.families();
    for (int at = 0; at < tally.sections().size() && cells.wins() > 0; at++) {
      Family family = card.families().get(at);
      all.add(
          new Measured(
              "on " + family.name() + " of 100 wins",
              new Proportion(tally.sections().get(at), tally.noted()),
              new Proportion(families[at], cells.wins())));
    }
    return all;
  }

  private List<String> how() {
    return List.of(
        "%s of each table, all four players of one kind, on the same deals of the card \"%s\"."
            .formatted(Words.count(answer.best().cells().games(), "game", "games"), card.name()),
        "How likely a tally is at a table: the compound multinomial distribution (Mosimann, Biometrika 49, 1962), with half a game in each box beforehand (Jeffreys), so that what the played games leave open is counted. Wall games, self-picked wins, and families are taken one after the other.",
        "\"Clearly\" stands for 20 times as likely as the next or more, \"nearly as well\" for less than 3 times (Kass and Raftery, Journal of the American Statistical Association 90, 1995).",
        "How far a tally lies from a table: the statistic G, beside that of 1,000 tallies drawn from the table's own games. How often tables are told apart: by such tallies, too, 1,000 of each or 400 for each of two.",
        "A player that knows a few families only, such as \"social\", knows the same ones in every game, by its seat. On which families its wins fall says little about where those of a club would.",
        "Ranges of shares: Wilson, %s %%.".formatted(StrictMath.round(HUNDRED * CONFIDENCE)));
  }

  private static Cell share(Proportion share) {
    Interval limits = share.wilson(CONFIDENCE);
    return Cell.interval(share.share(), limits.low(), limits.high());
  }

  /** A share as a number of 100, never 0 or 100 where it is not quite that. */
  private static String inHundred(double share) {
    long rounded = StrictMath.round(HUNDRED * share);
    if (rounded == 0 && share > 0) {
      return "fewer than 1";
    }
    return rounded == HUNDRED && share < 1 ? "more than 99" : String.valueOf(rounded);
  }
}
