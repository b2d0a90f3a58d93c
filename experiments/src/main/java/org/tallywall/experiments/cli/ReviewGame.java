package org.tallywall.experiments.cli;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.CheckedRecords;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.decisions.Decision;
import org.tallywall.experiments.decisions.Decisions;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.page.PageFile;
import org.tallywall.experiments.page.Rehearsal;
import org.tallywall.experiments.paper.GameReviewPage;
import org.tallywall.experiments.paper.ReviewPaper;
import org.tallywall.experiments.review.GameReview;
import org.tallywall.experiments.review.GameReviewWords;
import org.tallywall.experiments.review.GameReviewer;
import org.tallywall.experiments.review.Seated;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.text.Lettering;
import org.tallywall.reports.text.TextTable;
import org.tallywall.strategies.catalog.Catalog;
import picocli.CommandLine.Option;

/** Goes through one player's decisions of a recorded game. */
final class ReviewGame {
  /** How many decisions are looked at closely. */
  private static final int CLOSELY = 5;

  /** Games that the quick look at one decision has at least: one or more after each choice. */
  private static final int LEAST = 16;

  private static final long USUAL_SECONDS = 120;

  @Option(
      names = "--game",
      paramLabel = "NUMBER",
      description = "Goes through a recorded game, from 0; 120 seconds, more if it is long.")
  private Long number;

  @Option(
      names = "--seat",
      paramLabel = "SEAT",
      description = "Whose decisions of that game: 0 (East) to 3.")
  private Integer seat;

  /** Whether a game is to be gone through. */
  boolean wanted() {
    if (number == null && seat != null) {
      throw new WrongInputException("--seat belongs to --game; write --game NUMBER too");
    } else if (seat != null && (seat < 0 || seat >= Seats.COUNT)) {
      throw new WrongInputException("--seat takes a seat from 0 (East) to 3, not " + seat);
    }
    return number != null;
  }

  /** How long it plays unless somebody says. */
  static Long seconds(Long seconds, Long playouts) {
    return seconds == null && playouts == null ? Long.valueOf(USUAL_SECONDS) : seconds;
  }

  /** Reads the game, before anything is played. */
  GameRecord read(Path file, ConcreteHands hands) {
    try (CheckedRecords records = CheckedRecords.open(file, hands)) {
      for (GameRecord game = records.next(); game != null; game = records.next()) {
        if (game.header().game() == number) {
          return game;
        }
      }
    } catch (NoSuchFileException missing) {
      throw new WrongInputException("there is no file \"" + file + "\"; check its name and folder");
    } catch (IOException broken) {
      throw new WrongInputException("\"" + file + "\" cannot be read as records of games");
    }
    throw new WrongInputException("\"%s\" holds no game %s".formatted(file, number));
  }

  /** The card of the records. */
  static ConcreteHands hands(Path file, Path card) {
    Path path = card == null ? RecordCard.of(file) : card;
    MixedUp.wantsCard(path);
    return new ConcreteHands(CardFile.read(path).orThrow());
  }

  private int seat(GameRecord game) {
    if (seat == null && game.header().seat() < 0) {
      throw new WrongInputException(
          "write whose decisions to go through: --seat and 0 (East) to 3");
    }
    return seat == null ? game.header().seat() : seat;
  }

  /**
   * Goes through the game and prints what came out.
   *
   * @return whether the user stopped it
   */
  boolean review(Asked asked, ReviewEffort effort, Path html, Console console) {
    GameRecord game = asked.game();
    int of = seat(game);
    List<Decision> all =
        Decisions.of(game, asked.hands())
            .orElseThrow(() -> new WrongInputException(SheetOfStep.OTHER_LUCK))
            .stream()
            .filter(one -> one.seat() == of)
            .toList();
    int shares = 2 * Math.max(1, all.size());
    if (effort.share(shares).games() < LEAST) {
      throw new WrongInputException(
          "--playouts: %s take %s games at least"
              .formatted(
                  Words.count(all.size(), "decision", "decisions"),
                  Words.grouped((long) LEAST * shares)));
    }
    TableSetup setup = new TableSetup(asked.hands(), TableRules.of(game.header().rules()));
    GameReviewer reviewer = new GameReviewer(setup, asked.lister(), asked.players(), asked.seed());
    console.interrupts().begins(times -> reviewer.stop());
    GameReview review;
    try {
      review =
          reviewer.review(
              of,
              all,
              effort.share(shares),
              looks -> effort.share(2 * looks),
              CLOSELY,
              new Progress(console));
    } catch (Throwable thrown) {
      throw ReviewPrinter.told(thrown, asked.players());
    } finally {
      console.interrupts().over();
    }
    print(review, game, console);
    if (html != null) {
      SeatNames seats = SeatNames.FROM_EAST;
      String page =
          GameReviewPage.text(
              review,
              game,
              asked.hands(),
              Rehearsal.of(game, asked.hands(), seats, asked.inFiles()));
      PageFile.write(html, page, ReviewPaper.MAKER);
      console.say("Wrote " + html);
    }
    return review.stopped();
  }

  /**
   * What is asked.
   *
   * @param game the game
   * @param hands its card
   * @param lister names the choices of a position
   * @param players who plays on
   * @param seed the seed
   * @param inFiles the players that a record may name
   */
  record Asked(
      GameRecord game,
      ConcreteHands hands,
      GameReviewer.Lister lister,
      List<Seated> players,
      long seed,
      Catalog inFiles) {}

  private static void print(GameReview review, GameRecord game, Console console) {
    wrap(console, GameReviewWords.headline(review, GameReviewPage.who(review.seat())));
    console.say("");
    if (!review.closely().isEmpty()) {
      console
          .out()
          .print(
              TextTable.text(
                  GameReviewPage.table(review, game), console.width(), Lettering.UNICODE));
      console.say("");
      wrap(console, GameReviewWords.holdsFor(review.closely()));
    }
    wrap(console, GameReviewWords.picked(review));
  }

  private static void wrap(Console console, String text) {
    Words.wrapped(text, "", console.width()).forEach(console::say);
  }

  /** One plain line every few seconds. */
  private static final class Progress implements GameReviewer.Listener {
    private static final long PAUSE = TimeUnit.SECONDS.toNanos(5);

    private final Console console;
    private long next = System.nanoTime() + PAUSE;

    Progress(Console console) {
      this.console = console;
    }

    @Override
    public void looks(int number, int of, boolean closely) {
      long now = System.nanoTime();
      if (console.progress() && now - next >= 0) {
        next = now + PAUSE;
        console.complain(
            "tallywall: %s look, decision %s of %s"
                .formatted(closely ? "long" : "quick", number, of));
      }
    }
  }
}
