package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.card.Card;
import org.tallywall.core.play.IllegalMoveException;
import org.tallywall.core.sheet.Choice;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.experiments.ask.ReasonedMove;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.paper.ReviewPaper;
import org.tallywall.experiments.review.Advisers;
import org.tallywall.experiments.review.AmongTables;
import org.tallywall.experiments.review.Considered;
import org.tallywall.experiments.review.GameReviewer;
import org.tallywall.experiments.review.Guesses;
import org.tallywall.experiments.review.NoSuchMomentException;
import org.tallywall.experiments.review.Review;
import org.tallywall.experiments.review.ReviewMessage;
import org.tallywall.experiments.review.ReviewQuestion;
import org.tallywall.experiments.review.ReviewTable;
import org.tallywall.experiments.review.ReviewWords;
import org.tallywall.experiments.review.Reviewer;
import org.tallywall.experiments.review.Seated;
import org.tallywall.experiments.review.Shortlist;
import org.tallywall.experiments.review.UnlawfulChoiceException;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunEndingPlayerException;
import org.tallywall.experiments.story.ReasonWords;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.TypedTiles;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.text.Lettering;
import org.tallywall.reports.text.TextTable;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Reviews one position and prints how that goes and what comes out. */
final class ReviewPrinter {
  private final Console console;
  private final String file;
  private final PositionSheet sheet;
  private final PlayerSpec asked;
  private final List<List<Seated>> tables;
  private final List<String> options;
  private final Card card;
  private final List<Choice> named = new ArrayList<>();
  private List<Considered> choices = List.of();
  private List<ReasonedMove> answer;
  private AmongTables reviewed;

  ReviewPrinter(
      Console console,
      String file,
      PositionSheet sheet,
      PlayerSpec asked,
      List<List<Seated>> tables,
      List<String> options) {
    this.console = console;
    this.file = file;
    this.sheet = sheet;
    this.asked = asked;
    this.tables = tables;
    this.options = options;
    this.card = sheet.view().table().hands().card();
  }

  private String who() {
    return who(asked);
  }

  private static String who(PlayerSpec asked) {
    return "the player \"" + asked.type().id() + "\"";
  }

  /** Asks the player, and looks whether all can be played, so that faults come before games. */
  void prepare() {
    options.forEach(option -> named.add(named(option)));
    try {
      answer = PatientAsk.ask(who(), this::answer);
    } catch (UnlawfulChoiceException unlawful) {
      throw new WrongInputException("--options: " + unlawful.getMessage());
    }
    if (!sheet.moment().inPlay()) {
      tryOut();
    }
  }

  private List<ReasonedMove> answer(Pulse pulse) {
    shortlist(pulse).require(named);
    return ReasonedMove.of(sheet, asked.make(), player -> pulse.watched(player, 0), 0);
  }

  private Shortlist shortlist(Pulse pulse) {
    return shortlist(sheet, asked, pulse);
  }

  private static Shortlist shortlist(PositionSheet sheet, PlayerSpec asked, Pulse pulse) {
    return new Shortlist(
        sheet, Seated.of(asked), Advisers.usual(), player -> pulse.watched(player, 0));
  }

  private void tryOut() {
    try {
      choices = List.of(ownAnswer());
      Reviewer.tryOut(question(tables.get(0), 0));
    } catch (NoSuchMomentException none) {
      throw new WrongInputException(file + ": " + none.getMessage());
    } catch (Throwable thrown) {
      throw told(thrown, tables.get(0));
    }
  }

  private Considered ownAnswer() {
    return new Considered(
        answer.stream().map(ReasonedMove::move).toList(), List.of(asked.type().id()));
  }

  private ReviewQuestion question(List<Seated> players, long seed) {
    return new ReviewQuestion(sheet, choices, players, Guesses.USUAL, seed);
  }

  /** Names the choices of positions, a player's own first, and the one made. */
  static GameReviewer.Lister lister(PlayerSpec asked) {
    return (sheet, made) ->
        PatientAsk.ask(who(asked), pulse -> shortlist(sheet, asked, pulse).choices(List.of(made)));
  }

  private Choice named(String option) {
    try {
      return sheet.choice(option);
    } catch (FaultyFileException faulty) {
      throw new WrongInputException("--options: " + faulty.faults().get(0).message());
    }
  }

  /**
   * Reviews and prints.
   *
   * @param effort how much to play
   * @param seed the seed
   * @param brief whether to print a message alone
   * @return whether the user stopped it
   */
  boolean review(ReviewEffort effort, long seed, boolean brief) {
    if (!brief) {
      firstWords();
    }
    choices = PatientAsk.ask(who(), pulse -> shortlist(pulse).choices(named));
    List<Review> reviews = new ArrayList<>();
    boolean stopped = false;
    for (int at = 0; at < tables.size() && !stopped; at++) {
      Review review = review(at, effort, seed);
      reviews.add(review);
      stopped = review.ended() == Review.Ended.STOPPED;
      String before = tables.size() > 1 ? "Among " + name(at) + ". " : "";
      if (brief) {
        wrap(before + String.join(" ", ReviewMessage.of(review, card.name())));
      } else {
        print(review, before);
      }
    }
    AmongTables among = new AmongTables(names().subList(0, reviews.size()), reviews);
    reviewed = among;
    if (brief) {
      return stopped;
    }
    if (reviews.size() > 1) {
      console.say("");
      table(ReviewTable.sideBySide(among));
      console.say("");
      wrap(ReviewWords.depends(among));
    }
    console.say("");
    wrap(ReviewWords.rangesHold(reviews.get(0).confidence()));
    return stopped;
  }

  /** The position with its reviews; nothing before it was reviewed. */
  Optional<ReviewPaper.Reviewed> reviewed() {
    Path path = Path.of(file).getFileName();
    String name = path == null ? file : path.toString().replaceFirst("\\.txt$", "");
    return Optional.ofNullable(reviewed)
        .map(
            among ->
                new ReviewPaper.Reviewed(
                    sheet.scene().isEmpty() ? name : sheet.scene(), sheet, among));
  }

  private Review review(int table, ReviewEffort effort, long seed) {
    Reviewer reviewer =
        new Reviewer(question(tables.get(table), seed), effort.share(tables.size()));
    ReviewProgress progress =
        new ReviewProgress(console, tables.size() > 1 ? "among " + name(table) + ", " : "");
    console
        .interrupts()
        .begins(
            times -> {
              reviewer.stop();
              progress.stopping();
            });
    try {
      return reviewer.review(progress);
    } catch (Throwable thrown) {
      throw told(thrown, tables.get(table));
    } finally {
      console.interrupts().over();
      progress.end();
    }
  }

  static RuntimeException told(Throwable thrown, List<Seated> players) {
    String who =
        thrown instanceof IllegalMoveException illegal
            ? named(players, illegal.seat())
            : thrown instanceof RunEndingPlayerException end
                ? named(players, end.seat())
                : "a player of this table";
    return PatientAsk.told(who, thrown);
  }

  private static String named(List<Seated> players, int seat) {
    return "the player \"" + players.get(seat).name() + "\"";
  }

  private List<String> names() {
    List<String> names = new ArrayList<>();
    for (int at = 0; at < tables.size(); at++) {
      names.add(name(at));
    }
    return names;
  }

  /** What a table is called: its players, or how many of which. */
  private String name(int table) {
    List<String> players = tables.get(table).stream().map(Seated::name).distinct().toList();
    return String.join(", ", players);
  }

  private void firstWords() {
    console.say(sheet.scene().isEmpty() ? file : sheet.scene());
    wrap("  " + AskedTiles.of(sheet.view()));
    if (sheet.discardsLeftOut() > 0) {
      wrap(ReviewWords.leftOut(sheet.discardsLeftOut()));
    }
    ReasonWords reasons = new ReasonWords(card, SeatNames.BY_NUMBER, new TypedTiles());
    wrap("  " + asked.type().id() + ": " + ownAnswer().text());
    for (ReasonedMove move : answer) {
      if (!move.reasons().isEmpty()) {
        wrap("    " + move.move().text() + ": " + reasons.text(move.reasons()));
      }
    }
    console.out().flush();
  }

  private void print(Review review, String before) {
    console.say("");
    wrap(before + ReviewWords.headline(review));
    console.say("");
    table(ReviewTable.worth(review));
    console.say("");
    table(ReviewTable.endings(review, card));
    console.say("");
    wrap(ReviewWords.holdsFor(review));
    if (!ReviewWords.ended(review).isEmpty()) {
      wrap(ReviewWords.ended(review));
    }
  }

  private void table(Table table) {
    console.out().print(TextTable.text(table, console.width(), Lettering.UNICODE));
  }

  private void wrap(String text) {
    console.sayWrapped(text);
  }
}
