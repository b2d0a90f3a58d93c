package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.sheet.Move;
import org.tallywall.experiments.decisions.Decision;
import org.tallywall.experiments.page.Commentary;
import org.tallywall.experiments.page.GamePage;
import org.tallywall.experiments.page.StepNumbers;
import org.tallywall.experiments.review.GameReview;
import org.tallywall.experiments.review.GameReviewWords;
import org.tallywall.experiments.story.MomentWords;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.TypedTiles;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.markup.Element;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** The page of a game with the dearest decisions of one player: a table, and verdicts beside. */
public final class GameReviewPage {
  private static final SeatNames SEATS = SeatNames.FROM_EAST;

  private GameReviewPage() {}

  /**
   * The decisions looked at closely.
   *
   * @param review the review
   * @param game the game
   * @return a row for each, the one that costs most first
   */
  public static Table table(GameReview review, GameRecord game) {
    StepNumbers steps = new StepNumbers(game);
    TableBuilder table =
        Table.builder("dearest", "The decisions that seemed to cost most, looked at closely")
            .columns(
                Column.text("when", "The step of the page after which it was made."),
                Column.text("asked", "What the player was asked."),
                Column.text("made", "The choice made in the game.").headed("in the game"),
                Column.text("best", "The choice that did best.").headed("did best"),
                Column.text("verdict", "How the choice made compares with the best."));
    for (GameReview.Close one : review.closely()) {
      Decision decision = one.decision();
      table.row(
          Cell.text("step " + steps.after(decision.events())),
          Cell.text(MomentWords.question(decision.moment(), SEATS, new TypedTiles())),
          Cell.text(decision.move().text()),
          Cell.text(GameReviewWords.best(one)),
          Cell.text(GameReviewWords.verdict(one)));
    }
    return table.build();
  }

  /**
   * Whose decisions they are.
   *
   * @param seat the seat
   * @return words for the player
   */
  public static String who(int seat) {
    return seat == 0 ? "East" : SEATS.player(seat);
  }

  /**
   * The page.
   *
   * @param review the review
   * @param game the game
   * @param hands the card
   * @param commentary what the players say about their play
   * @return the whole file
   */
  public static String text(
      GameReview review, GameRecord game, ConcreteHands hands, Commentary commentary) {
    List<Part> before = new ArrayList<>();
    before.add(new Part.Answer(GameReviewWords.headline(review, who(review.seat())), List.of()));
    if (!review.closely().isEmpty()) {
      before.add(new Part.Grid(table(review, game), Handles.COPY));
      before.add(new Part.Drawing(links(review, new StepNumbers(game)), ""));
      before.add(Part.Paragraph.of(GameReviewWords.holdsFor(review.closely())));
    }
    before.add(Part.Paragraph.of(GameReviewWords.picked(review)));
    Commentary both = new Verdicts(commentary, review, game.events());
    return GamePage.text(game, hands, SEATS, both, before, ReviewPaper.MAKER);
  }

  /** To the table as the player saw it, with the other racks closed. */
  private static Element links(GameReview review, StepNumbers steps) {
    Element list = Element.of("p").with("class", "to-steps").add(text("To the table then: "));
    for (GameReview.Close one : review.closely()) {
      int step = steps.after(one.decision().events());
      String to = "#step=" + step + "&seat=" + review.seat() + "&racks=own";
      list.add(Element.of("a", "step " + step).with("href", to)).add(text(" "));
    }
    return list.add(text("The step after it shows the choice, and the verdict beside the rack."));
  }

  private static Element text(String words) {
    return Element.of("span", words);
  }

  /** The verdicts beside what the players say. */
  private record Verdicts(Commentary players, GameReview review, List<GameEvent> events)
      implements Commentary {
    @Override
    public OptionalInt aim(int event, int seat) {
      return players.aim(event, seat);
    }

    @Override
    public List<String> reasons(int event, int seat) {
      List<String> all = new ArrayList<>(players.reasons(event, seat));
      for (GameReview.Close one : review.closely()) {
        if (one.decision().seat() == seat && place(one.decision()) == event) {
          all.add(GameReviewWords.beside(one));
        }
      }
      return all;
    }

    /** The event that came of a decision; of a discard let go, the discard. */
    private int place(Decision decision) {
      int next = decision.events();
      if (decision.move() instanceof Move.Nothing) {
        return next - 1;
      }
      for (int at = next; at < Math.min(next + SEATS.names().size(), events.size()); at++) {
        GameEvent event = events.get(at);
        boolean other =
            (event instanceof GameEvent.Pass pass && pass.from() != decision.seat())
                || (event instanceof GameEvent.Courtesy courtesy
                    && !courtesy.seats().contains(decision.seat()));
        if (!other) {
          return at;
        }
      }
      return next;
    }
  }
}
