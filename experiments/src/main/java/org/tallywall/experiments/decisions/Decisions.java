package org.tallywall.experiments.decisions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.IllegalMoveException;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.sheet.NotedPlayer;
import org.tallywall.core.sheet.SheetWriter;

/** Goes through a recorded game and notes what each player knew when it decided. */
public final class Decisions {
  private final GameRecord game;
  private final List<Decision> all = new ArrayList<>();

  private Decisions(GameRecord game) {
    this.game = game;
  }

  /**
   * The decisions of a game, by playing it again as its record says. Whether East declares a hand
   * that is complete before play is no decision here.
   *
   * @param game the record of a game that was played by the rules from the wall of its seed
   * @param hands the card on which it was played
   * @return the decisions in the order in which they were made; none where the game would take
   *     another course, as when tiles passed on unseen were drawn by another luck
   */
  public static Optional<List<Decision>> of(GameRecord game, ConcreteHands hands) {
    return of(game, hands, 0);
  }

  /**
   * The decisions of a game that was played with luck of its own.
   *
   * @param game the record of a game that was played by the rules from the wall of its seed
   * @param hands the card on which it was played
   * @param luck which sample of the luck of decisions it was, from 0
   * @return the decisions in the order in which they were made; none where the game would take
   *     another course
   */
  public static Optional<List<Decision>> of(GameRecord game, ConcreteHands hands, int luck) {
    Decisions decisions = new Decisions(game);
    return visit(game, hands, luck, decisions::note)
        ? Optional.of(List.copyOf(decisions.all))
        : Optional.empty();
  }

  /**
   * Goes through a game, with what each player knew at hand.
   *
   * @param game the record of a game that was played by the rules from the wall of its seed
   * @param hands the card on which it was played
   * @param luck which sample of the luck of decisions it was, from 0
   * @param listener hears every decision; of a claim that lost to another, the size means nothing
   * @return whether the game took its course; false where it would take another, and then what was
   *     heard means nothing
   */
  public static boolean visit(
      GameRecord game, ConcreteHands hands, int luck, NotedPlayer.Listener listener) {
    TableRules rules = TableRules.of(game.header().rules());
    GameRecorder recorder = new GameRecorder();
    List<Player> players = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      players.add(new NotedPlayer(new RecordedPlayer(game, hands), listener));
    }
    try {
      new Game(new TableSetup(hands, rules), players, recorder)
          .play(Deal.of(game.header().seed(), game.header().deal(), rules.tiles()).withLuck(luck));
    } catch (IllegalMoveException | RecordedPlayer.OtherCourseException other) {
      return false;
    }
    return recorder.record(game.header()).events().equals(game.events());
  }

  private void note(SeatView view, Moment moment, Move move) {
    int events = (int) view.events();
    all.add(
        new Decision(
            events,
            view.seat(),
            moment,
            move,
            lost(events, view.seat()) && move instanceof Move.Claim,
            SheetWriter.text(view, moment)));
  }

  private boolean lost(int events, int seat) {
    GameEvent next = events < game.events().size() ? game.events().get(events) : null;
    return (next instanceof GameEvent.Claim claim && claim.losers().exposures().contains(seat))
        || (next instanceof GameEvent.Mahjong won && won.losers().exposures().contains(seat));
  }
}
