package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.tallywall.core.card.Card;
import org.tallywall.core.play.Player;
import org.tallywall.core.sheet.Choice;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.experiments.ask.ReasonedMove;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.review.Considered;
import org.tallywall.experiments.review.Guesses;
import org.tallywall.experiments.review.Review;
import org.tallywall.experiments.review.ReviewQuestion;
import org.tallywall.experiments.review.ReviewTable;
import org.tallywall.experiments.review.ReviewWords;
import org.tallywall.experiments.review.Reviewer;
import org.tallywall.experiments.review.Seated;
import org.tallywall.experiments.review.Shortlist;
import org.tallywall.experiments.review.UnlawfulChoiceException;
import org.tallywall.experiments.story.ReasonWords;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.TypedTiles;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.text.Lettering;
import org.tallywall.reports.text.TextTable;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Reviews one position and prints how that goes and what comes out. */
final class ReviewPrinter {
  private static final SeatNames SEATS =
      new SeatNames(List.of("seat 0", "seat 1", "seat 2", "seat 3"));

  /** Whose choices are looked at, too. */
  private static final List<String> ADVISERS =
      List.of("watchful", "reckoner", "bold", "cautious", "nearest");

  private final Console console;
  private final String file;
  private final PositionSheet sheet;
  private final PlayerSpec asked;
  private final List<List<Seated>> tables;
  private final List<String> options;
  private final ReviewWords words = new ReviewWords();
  private final Card card;
  private List<Considered> choices;
  private List<ReasonedMove> answer;

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
    return "the player \"" + asked.type().id() + "\"";
  }

  /** Finds out what is to be looked at, so that whatever is wrong is said before any game. */
  void prepare() {
    List<Choice> named = new ArrayList<>();
    options.forEach(option -> named.add(named(option)));
    choices =
        PatientAsk.ask(
            who(),
            pulse -> {
              UnaryOperator<Player> watched = player -> pulse.watched(player, 0);
              answer = ReasonedMove.of(sheet, asked.make(), watched, 0);
              return new Shortlist(
                      sheet, new Seated(asked.type().id(), asked::make), advisers(), watched)
                  .choices(named);
            });
  }

  private static List<Seated> advisers() {
    Catalog catalog = Catalog.standard();
    return ADVISERS.stream()
        .map(id -> ReviewPlayers.seated(id, new PlayerSpec(catalog.find(id), java.util.Map.of())))
        .toList();
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
   * @return whether the user stopped it
   */
  boolean review(ReviewEffort effort, long seed) {
    firstWords();
    ReviewQuestion question =
        new ReviewQuestion(sheet, choices, tables.get(0), Guesses.USUAL, seed);
    Reviewer reviewer = new Reviewer(question, effort.share(tables.size()));
    Review review = reviewer.review(known -> {});
    print(review);
    return review.ended() == Review.Ended.STOPPED;
  }

  private void firstWords() {
    console.say(sheet.scene().isEmpty() ? file : sheet.scene());
    wrap("  " + AskedTiles.of(sheet.view()));
    if (sheet.discardsLeftOut() > 0) {
      wrap(
          "The sheet leaves out "
              + Words.count(sheet.discardsLeftOut(), "discard", "discards")
              + "; they are taken for unseen.");
    }
    ReasonWords reasons = new ReasonWords(card, SEATS, new TypedTiles());
    wrap("  " + asked.type().id() + ": " + choices.get(0).text());
    for (ReasonedMove move : answer) {
      if (!move.reasons().isEmpty()) {
        wrap("    " + move.move().text() + ": " + reasons.text(move.reasons()));
      }
    }
    console.out().flush();
  }

  private void print(Review review) {
    console.say("");
    wrap(words.headline(review));
    console.say("");
    console
        .out()
        .print(TextTable.text(ReviewTable.worth(review, words), console.width(), Lettering.UNICODE));
    console.say("");
    console
        .out()
        .print(TextTable.text(ReviewTable.endings(review, card), console.width(), Lettering.UNICODE));
    console.say("");
    words.holdsFor(review).forEach(this::wrap);
    wrap(words.ended(review));
  }

  private void wrap(String text) {
    String plain = text.stripLeading();
    String indent = " ".repeat(text.length() - plain.length());
    List<String> lines = Words.wrapped(plain, indent, console.width() - 4);
    console.say(lines.get(0));
    lines.subList(1, lines.size()).forEach(line -> console.say("  " + line));
  }
}
