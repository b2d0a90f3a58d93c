package org.tallywall.experiments.tally;

import java.util.List;
import java.util.stream.IntStream;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.strategies.player.NearestPlayer;
import org.tallywall.strategies.player.RandomLegalPlayer;

/** A table with a card on which games are won quickly, for tests of tallies. */
final class Tables {
  private static final String CARD =
      """
      { "card": "Gangplank test card", "families": [
        { "family": "Ladders", "lines": [
          { "tiles": "FF 11x 222x 333x 4444x", "slide": "any", "value": 25 },
          { "tiles": "22x 33y 444x 555y 6666x", "slide": "any", "value": 30 } ] },
        { "family": "Echoes", "lines": [
          { "tiles": "nnnx nnny nnnz FFF (NN|EE)", "value": 25 },
          { "tiles": "nnnnx nny DDDDx DDDDy", "value": 35 } ] },
        { "family": "Couples", "lines": [
          { "tiles": "11x 22x 33x 44x 55x 66x 77x", "slide": "any", "value": 50,
            "concealed": true } ] } ] }
      """;

  static final int EVERY_SEAT = 15;

  private Tables() {}

  static TableSetup setup() {
    return new TableSetup(
        new ConcreteHands(CardFile.json("card", CARD).orThrow()), TableRules.STANDARD);
  }

  /** Four players that head for the nearest line, one of them clumsy where asked for. */
  static List<Player> players(boolean clumsyAtThree) {
    return IntStream.range(0, 4)
        .mapToObj(
            seat ->
                clumsyAtThree && seat == 3 ? (Player) new RandomLegalPlayer() : new NearestPlayer())
        .toList();
  }

  /** Plays deals and counts them. */
  static void play(TableTally into, long firstDeal, int deals) {
    TallyListener listener = new TallyListener();
    listener.count(into, EVERY_SEAT);
    for (int deal = 0; deal < deals; deal++) {
      play(listener, firstDeal + deal, 1);
      into.endDeal();
    }
  }

  static void play(GameListener listener, long firstDeal, int deals) {
    TableSetup setup = setup();
    Game game = new Game(setup, players(true), listener);
    for (long deal = firstDeal; deal < firstDeal + deals; deal++) {
      game.play(Deal.of(31, deal, setup.rules().tiles()));
    }
  }
}
