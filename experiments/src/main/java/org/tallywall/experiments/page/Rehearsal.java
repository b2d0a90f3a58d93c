package org.tallywall.experiments.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Node;
import org.tallywall.experiments.run.Patient;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.story.Note;
import org.tallywall.experiments.story.ReasonWords;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.TypedTiles;
import org.tallywall.experiments.study.Patience;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.catalog.WrongPlayerException;
import org.tallywall.strategies.reason.ExplainedPlayer;

/**
 * Brings the players of a record back to the table, so that they say what they aim at, and why they
 * choose as they do.
 */
public final class Rehearsal {
  private Rehearsal() {}

  /**
   * Plays the game of a record again with the players that it names.
   *
   * @param game the record
   * @param hands the card on which it was played
   * @param seats what the seats are called
   * @param catalog the players that there are
   * @return what they say; nothing where a player is not known here, or the game would take another
   *     course today
   */
  public static Commentary of(
      GameRecord game, ConcreteHands hands, SeatNames seats, Catalog catalog) {
    Optional<List<Player>> players = seated(game, catalog);
    if (players.isEmpty()) {
      return Commentary.NONE;
    }
    List<Note> notes = new ArrayList<>();
    List<Player> heard = new ArrayList<>();
    for (Player player : players.get()) {
      heard.add(
          new ExplainedPlayer(
              player,
              (view, move, why) -> notes.add(new Note(view.events(), view.seat(), move, why))));
    }
    ReasonWords words = new ReasonWords(hands.card(), seats, new TypedTiles());
    try {
      TableRules rules = TableRules.of(game.header().rules());
      Pulse pulse = new Pulse();
      Optional<AimNotes> aims =
          Patient.wait(
              pulse,
              RunLimits.of(1, Patience.USUAL.decisionSeconds()),
              () -> AimNotes.of(game, new TableSetup(hands, rules), pulse.watched(heard)));
      return aims.isPresent() ? new Spoken(game, aims.get(), notes, words) : Commentary.NONE;
    } catch (Throwable otherVersion) {
      // Rules or players of another version, or players that break down or take for ever: the
      // record is still good, only the reasons are unknown.
      return Commentary.NONE;
    }
  }

  /** The players; nothing where one is not known here, or cannot be made. */
  private static Optional<List<Player>> seated(GameRecord game, Catalog catalog) {
    try {
      return players(game, catalog);
    } catch (WrongPlayerException broken) {
      return Optional.empty();
    }
  }

  private static Optional<List<Player>> players(GameRecord game, Catalog catalog) {
    Faults faults = new Faults();
    Node written = LocatedJson.read(StudyJson.pretty(game.header().players()), faults);
    List<Player> players = new ArrayList<>();
    if (!faults.any() && written.value() instanceof Node.Items items) {
      for (Node one : items.values()) {
        PlayerSpec spec = catalog.read(one, faults);
        if (spec == null || faults.any()) {
          return Optional.empty();
        }
        players.add(spec.make());
      }
    }
    return players.size() == game.header().players().size()
        ? Optional.of(players)
        : Optional.empty();
  }
}
