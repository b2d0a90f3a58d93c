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
import org.tallywall.core.play.ListenerFan;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;

/**
 * Notes what players say that they aim at, by playing the game of a record once more: the same
 * players on the same deal do the same, and if they do not, nothing is noted.
 */
final class AimNotes implements GameListener {
  private final List<Map<Integer, Integer>> aims = new ArrayList<>();
  private final GameRecorder recorder = new GameRecorder();

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
    new Game(setup, players, new ListenerFan(notes.recorder, notes)).play(deal);
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

  /** Adds the aim behind a choice, unless the player was asked after the same event. */
  void heard(int event, int seat, int line) {
    aims.get(seat).putIfAbsent(event, line);
  }

  @Override
  public boolean wantsAims() {
    return true;
  }

  @Override
  public void aimed(int seat, AimMoment moment, int line) {
    aims.get(seat).put(recorder.events() - 1, line);
  }
}
