package org.tallywall.experiments.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.tallywall.core.play.AimMoment;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.WinBy;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.tile.Exposure;

/**
 * Notes what players say that they aim at, by playing the game of a record once more: the same
 * players on the same deal do the same, and if they do not, nothing is noted.
 */
final class AimNotes implements GameListener {
  private final List<Map<Integer, Integer>> aims = new ArrayList<>();
  private final GameRecorder recorder = new GameRecorder();
  private int events;

  private AimNotes() {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      aims.add(new HashMap<>());
    }
  }

  /**
   * Plays the game of a record again and notes the aims.
   *
   * @param game the record
   * @param setup the card and the rules of the record
   * @param players the players who sat there
   * @return what they aim at; none where the game took another course
   */
  static Optional<AimNotes> of(GameRecord game, TableSetup setup, List<Player> players) {
    AimNotes notes = new AimNotes();
    Deal deal = Deal.of(game.header().seed(), game.header().deal(), setup.rules().tiles());
    if (!sameWall(game, deal)) {
      return Optional.empty();
    }
    new Game(setup, players, notes).play(deal);
    boolean same = notes.recorder.record(game.header()).events().equals(game.events());
    return same ? Optional.of(notes) : Optional.empty();
  }

  private static boolean sameWall(GameRecord game, Deal deal) {
    boolean same = deal.size() == game.wall().size();
    for (int at = 0; same && at < deal.size(); at++) {
      same = deal.tile(at) == game.wall().get(at);
    }
    return same;
  }

  /** What a player aims at once an event has happened. */
  OptionalInt aim(int event, int seat) {
    for (int at = event; at >= -1; at--) {
      Integer line = aims.get(seat).get(at);
      if (line != null) {
        return line == Player.NO_AIM ? OptionalInt.empty() : OptionalInt.of(line);
      }
    }
    return OptionalInt.empty();
  }

  @Override
  public boolean wantsAims() {
    return true;
  }

  @Override
  public void aimed(int seat, AimMoment moment, int line) {
    aims.get(seat).put(events - 1, line);
  }

  @Override
  public void began(OpenTable table) {
    recorder.began(table);
    events = 0;
  }

  @Override
  public void passed(PassStep step, int from, int[] own, int[] forwarded) {
    recorder.passed(step, from, own, forwarded);
    events++;
  }

  @Override
  public void stopAsked(int stoppers) {
    recorder.stopAsked(stoppers);
    events++;
  }

  @Override
  public void courtesy(int low, int[] asked, int[] lowGave, int[] highGave) {
    recorder.courtesy(low, asked, lowGave, highGave);
    events++;
  }

  @Override
  public void drew(int seat, int tile) {
    recorder.drew(seat, tile);
    events++;
  }

  @Override
  public void exchanged(int seat, int owner, int exposure, int tile) {
    recorder.exchanged(seat, owner, exposure, tile);
    events++;
  }

  @Override
  public void discarded(int seat, int tile) {
    recorder.discarded(seat, tile);
    events++;
  }

  @Override
  public void claimed(int seat, int from, int tile, Exposure laid, int also, int alsoMahjong) {
    recorder.claimed(seat, from, tile, laid, also, alsoMahjong);
    events++;
  }

  @Override
  public void died(int seat) {
    recorder.died(seat);
    events++;
  }

  @Override
  public void declared(int seat, WinBy by, int from, int also, int alsoMahjong) {
    recorder.declared(seat, by, from, also, alsoMahjong);
    events++;
  }

  @Override
  public void ended(Outcome outcome) {
    recorder.ended(outcome);
    events += outcome.how() == Outcome.How.MAHJONG ? 0 : 1;
  }
}
