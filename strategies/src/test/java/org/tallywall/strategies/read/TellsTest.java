package org.tallywall.strategies.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.TableRules;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** What can be seen of a player is what plain code sees, in games where everything is seen. */
@Tag("one-jdk")
class TellsTest {
  private static final int DEALS = 40;

  /** Looks at all others whenever it has a turn. */
  private static final class Looking extends ForwardingPlayer {
    private final Set<String> seen;
    private final OpponentReader reader = new OpponentReader();
    private final Tells tells = new Tells();

    Looking(Player player, Set<String> seen) {
      super(player);
      this.seen = seen;
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      reader.look(view);
      PlainReading plain = new PlainReading(view, ReadSettings.USUAL);
      for (int other = 0; other < 4; other++) {
        if (other != view.seat() && !view.dead(other)) {
          tells.look(view, other, reader);
          compare(plain.told(other));
        }
      }
      return super.turn(view, random);
    }

    private void compare(PlainTells plain) {
      for (int at = 0; at < Tells.names().size(); at++) {
        String name = Tells.names().get(at);
        assertThat(tells.value(at)).as(name).isCloseTo(plain.told(name), within(1e-9));
        if (tells.value(at) != 0) {
          seen.add(name);
        }
      }
    }
  }

  @Test
  void tells_areThoseOfPlainCode_andAllButTheRarestAreSeen() {
    Set<String> seen = new TreeSet<>();
    List<Player> seats = new ArrayList<>();
    for (String id : List.of("watchful", "random-legal", "newcomer", "random-legal")) {
      Player player = new PlayerSpec(Catalog.standard().type(id).orElseThrow(), Map.of()).make();
      seats.add(new Looking(player, seen));
    }
    for (int deal = 0; deal < DEALS; deal++) {
      TableRules rules = TestTable.rulesOf(deal);
      new Game(new TableSetup(TestTable.HANDS, rules), seats, GameListener.NONE)
          .play(Deal.of(TestTable.SEED, deal, rules.tiles()));
    }
    Set<String> notSeen = new TreeSet<>(Tells.names());
    notSeen.removeAll(seen);
    assertThat(notSeen).isSubsetOf("shows 3, wall 90");
  }
}
