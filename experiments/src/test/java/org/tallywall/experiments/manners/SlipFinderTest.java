package org.tallywall.experiments.manners;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** What is found in whole games agrees with a second count, made from the events alone. */
class SlipFinderTest {
  private static final ConcreteHands HANDS =
      new ConcreteHands(CardFile.read(Path.of("cards", "saltmarsh-quay.json")).orThrow());

  @Test
  void honorsAndPairs_areThoseOfTheEvents() {
    SlipCount count = new SlipCount(2);
    long honors = 0;
    long pairs = 0;
    for (int deal = 0; deal < 40; deal++) {
      GameRecord game = play(deal);
      List<FoundSlip> found = new SlipFinder().find(game, HANDS).orElseThrow();
      count.add(game, found);
      for (GameEvent event : game.events()) {
        if (event instanceof GameEvent.Pass pass) {
          honors += honors(pass.own()) ? 1 : 0;
          pairs += pair(pass.own()) ? 1 : 0;
        } else if (event instanceof GameEvent.Courtesy courtesy) {
          honors += courtesy.tiles().stream().filter(SlipFinderTest::honors).count();
          pairs += courtesy.tiles().stream().filter(SlipFinderTest::pair).count();
        }
      }
    }
    assertThat(pairs).isPositive();
    assertThat(count.of(Slip.PAIR_PASSED).number()).isEqualTo(pairs);
    assertThat(count.of(Slip.HONORS_PASSED).number()).isEqualTo(honors);
    assertThat(count.places(Slip.PAIR_PASSED)).hasSize(2);
    long all = 0;
    for (Slip slip : Slip.values()) {
      all += count.of(slip).number();
    }
    assertThat(count.any().number()).isEqualTo(all);
    assertThat(count.any().games()).isEqualTo(40);
  }

  private static boolean honors(List<Integer> tiles) {
    Set<Integer> kinds = new TreeSet<>(tiles);
    return kinds.stream().filter(kind -> kind >= Tile.NORTH && kind <= Tile.SOUTH).count() == 3
        || kinds.stream().filter(kind -> kind >= Tile.RED && kind <= Tile.SOAP).count() == 3;
  }

  private static boolean pair(List<Integer> tiles) {
    List<Integer> plain = tiles.stream().filter(kind -> kind != Tile.FLOWER).toList();
    return new TreeSet<>(plain).size() < plain.size();
  }

  private static GameRecord play(int deal) {
    PlayerSpec reckoner =
        new PlayerSpec(Catalog.standard().type("reckoner").orElseThrow(), Map.of());
    List<Player> players = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      players.add(reckoner.make());
    }
    GameRecorder recorder = new GameRecorder();
    TableRules rules = TableRules.STANDARD;
    new Game(new TableSetup(HANDS, rules), players, recorder)
        .play(Deal.of(16, deal, rules.tiles()));
    GameRecord.Header header =
        new GameRecord.Header(
            "",
            16,
            deal,
            deal,
            "",
            -1,
            new GameRecord.CardName(HANDS.card().name(), HANDS.card().digest()),
            rules.switches(),
            List.of("reckoner", "reckoner", "reckoner", "reckoner"));
    return recorder.record(header);
  }
}
