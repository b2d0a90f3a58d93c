package org.tallywall.experiments.review;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.PassMoment;
import org.tallywall.core.play.Player;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.SheetView;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.strategies.playout.Playout;

/** Plays the games of a review in one thread after the other, never in two at once. */
final class WorldPlayer {
  private final Pulse pulse = new Pulse();
  private final ReviewQuestion question;
  private Playout playout;
  private List<Playout.Opening> openings;
  private int seat;

  WorldPlayer(ReviewQuestion question) {
    this.question = question;
  }

  Pulse pulse() {
    return pulse;
  }

  private void sitDown() {
    List<Supplier<Player>> makers = new ArrayList<>();
    for (int at = 0; at < question.players().size(); at++) {
      Supplier<Player> maker = question.players().get(at).maker();
      int chair = at;
      makers.add(() -> pulse.watched(maker.get(), chair));
    }
    SheetView view = question.sheet().view();
    seat = view.seat();
    playout =
        new Playout(
            question.guesses().of(makers, question.players().stream().map(Seated::kind).toList()),
            List.of(makers));
    RandomStream numbers =
        new RandomStream(new StreamKey(question.seed(), 0, Purpose.DECISION, seat, 0, 0));
    Moment moment = question.sheet().moment();
    if (moment.inPlay()) {
      playout.begin(view, numbers);
    } else {
      playout.begin(view, numbers, before(moment, seat));
    }
    openings = new ArrayList<>();
    question
        .choices()
        .forEach(choice -> openings.add(new MoveOpening(view, moment, choice.moves())));
  }

  private static PassMoment before(Moment moment, int seat) {
    if (moment instanceof Moment.Pass pass) {
      return new PassMoment.Step(pass.step());
    } else if (moment instanceof Moment.Stop) {
      return new PassMoment.Stop();
    }
    return moment instanceof Moment.CourtesyGive give
        ? new PassMoment.CourtesyAgreed(seat, give.number())
        : new PassMoment.CourtesyNumber();
  }

  /** Plays one world after each of the choices. */
  void play(int world, List<Integer> choices, Round into) {
    if (playout == null) {
      sitDown();
    }
    playout.world(world);
    for (int choice : choices) {
      Outcome outcome = playout.after(openings.get(choice));
      Outcome.Win win = outcome.win();
      byte end = win == null ? Round.WALL : Round.OTHER;
      int line = ChoiceResult.NO_LINE;
      if (win != null && win.seat() == seat) {
        end = Round.WON;
        line = win.line();
      } else if (win != null && win.from() == seat) {
        end = Round.THREW;
      }
      into.set(choice, world, outcome.points().get(seat), end, line);
    }
  }
}
