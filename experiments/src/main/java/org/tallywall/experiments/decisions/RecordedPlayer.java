package org.tallywall.experiments.decisions;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;

/**
 * Answers as the record of a game says that its seat did. Of a claim for an exposure that lost, the
 * record does not say the size; the smallest that is legal stands for it.
 */
final class RecordedPlayer implements Player {
  private final List<GameEvent> events;
  private final int line;

  RecordedPlayer(GameRecord game, ConcreteHands hands) {
    events = game.events();
    line = game.end().win() == null ? -1 : place(game.end().win().line(), hands);
  }

  private static int place(String id, ConcreteHands hands) {
    for (int line = 0; line < hands.lines(); line++) {
      if (hands.line(line).id().equals(id)) {
        return line;
      }
    }
    return -1;
  }

  /** The first event of a kind from the present moment on that says something. */
  private <T extends GameEvent, R> R first(SeatView view, Class<T> kind, Function<T, R> says) {
    for (int at = (int) view.events(); at < events.size(); at++) {
      if (kind.isInstance(events.get(at))) {
        R said = says.apply(kind.cast(events.get(at)));
        if (said != null) {
          return said;
        }
      }
    }
    throw new OtherCourseException();
  }

  private Optional<GameEvent> next(SeatView view) {
    int at = (int) view.events();
    return at < events.size() ? Optional.of(events.get(at)) : Optional.empty();
  }

  private static int[] kinds(List<Integer> tiles) {
    return tiles.stream().mapToInt(kind -> kind).toArray();
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return next(view).filter(GameEvent.Mahjong.class::isInstance).isPresent();
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    return first(
        view,
        GameEvent.Pass.class,
        pass -> pass.from() == view.seat() ? PassChoice.of(kinds(pass.own())) : null);
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return first(view, GameEvent.Stop.class, stop -> stop.seats().contains(view.seat()));
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return first(
        view,
        GameEvent.Courtesy.class,
        one -> {
          int at = one.seats().indexOf(view.seat());
          return at < 0 ? null : one.asked().get(at);
        });
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return first(
        view,
        GameEvent.Courtesy.class,
        one -> {
          int at = one.seats().indexOf(view.seat());
          return at < 0 ? null : kinds(one.tiles().get(at));
        });
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    GameEvent event = next(view).orElseThrow(OtherCourseException::new);
    if (event instanceof GameEvent.Claim claim) {
      return claim.seat() == view.seat()
          ? new ClaimChoice.Expose(claim.kind(), claim.size(), claim.jokers())
          : lost(view, claim.losers());
    } else if (event instanceof GameEvent.Mahjong mahjong) {
      return mahjong.seat() == view.seat()
          ? new ClaimChoice.Mahjong(line)
          : lost(view, mahjong.losers());
    }
    return ClaimChoice.nothing();
  }

  private static ClaimChoice lost(SeatView view, GameEvent.Losers losers) {
    if (losers.mahjongs().contains(view.seat())) {
      return ClaimChoice.mahjong();
    }
    return losers.exposures().contains(view.seat())
        ? LegalMoves.exposures(view).get(0)
        : ClaimChoice.nothing();
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    GameEvent event = next(view).orElseThrow(OtherCourseException::new);
    if (event instanceof GameEvent.Discard discard) {
      return TurnChoice.discard(discard.tile());
    } else if (event instanceof GameEvent.Exchange exchange) {
      return TurnChoice.exchange(exchange.owner(), exchange.exposure());
    } else if (event instanceof GameEvent.Mahjong) {
      return new TurnChoice.Mahjong(line);
    }
    throw new OtherCourseException();
  }

  /** The game asks what the record does not answer. */
  static final class OtherCourseException extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }
}
