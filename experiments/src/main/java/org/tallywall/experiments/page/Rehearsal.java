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
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Brings the players of a record back to the table, so that they can say what they aim at. */
public final class Rehearsal {
  private Rehearsal() {}

  /**
   * Plays the game of a record again with the players that it names.
   *
   * @param game the record
   * @param hands the card on which it was played
   * @param catalog the players that there are
   * @return what they say; nothing where a player is not known here, or the game would take another
   *     course today
   */
  public static Commentary of(GameRecord game, ConcreteHands hands, Catalog catalog) {
    Optional<List<Player>> players = players(game, catalog);
    if (players.isEmpty()) {
      return Commentary.NONE;
    }
    try {
      TableRules rules = TableRules.of(game.header().rules());
      return AimNotes.of(game, new TableSetup(hands, rules), players.get());
    } catch (RuntimeException otherVersion) {
      // Rules or players of another version: the record is still good, only the aims are unknown.
      return Commentary.NONE;
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
