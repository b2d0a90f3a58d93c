package org.tallywall.strategies.reason;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.card.Line;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.habit.Judging;

/** Every number in a reason is the one that the view gives, on 10,000 decisions of games. */
@Tag("long")
class ReasonsAgreeTest {
  private static final int DECISIONS = 10_000;
  private static final List<String> PLAYERS =
      List.of("watchful", "reckoner", "nearest", "watchful", "random-legal");

  private final Map<String, Integer> seen = new TreeMap<>();
  private int decisions;

  private void check(SeatView view, Move move, List<Reason> reasons, Player player) {
    decisions++;
    assertThat(reasons).doesNotContainNull();
    if (player.aim(view) != Player.NO_AIM) {
      assertThat(reasons).isNotEmpty();
    }
    PlainFacts before = new PlainFacts(view);
    PlainFacts after = new PlainFacts(view);
    move(after, view, move);
    for (Reason reason : reasons) {
      seen.merge(reason.getClass().getSimpleName(), 1, Integer::sum);
      assertThat(agrees(view, move, reason, player, before, after))
          .as("%s for %s with %s", reason, move.text(), rack(view))
          .isTrue();
    }
  }

  private static String rack(SeatView view) {
    var rack = new org.tallywall.core.tile.Rack();
    view.copyRack(rack);
    return rack + " " + view.exposures(view.seat());
  }

  private static boolean agrees(
      SeatView view, Move move, Reason reason, Player player, PlainFacts before, PlainFacts after) {
    if (reason instanceof Reason.Aim aim) {
      return aim.line() == player.aim(view) && agreesWithHand(view, aim, player);
    } else if (reason instanceof Reason.Rather rather) {
      return new PlainJudgment(view, player).agrees(rather, (Move.Discard) move);
    } else if (reason instanceof Reason.LeftClaim left) {
      return agrees(view, left, before, player);
    } else if (reason instanceof Reason.Complete complete) {
      Line line = view.table().hands().line(complete.line());
      PlainFacts whole = new PlainFacts(view);
      if (view.offered() >= 0) {
        whole.held[view.offered()]++;
        whole.out[view.offered()]--;
      }
      return line.value() == complete.value() && whole.least(complete.line()) == 0;
    } else if (reason instanceof Reason.Unneeded unneeded) {
      return unneeded.away() == before.least(-1) && unneeded.away() == after.least(-1);
    } else if (reason instanceof Reason.Costs costs) {
      return costs.from() == before.least(-1)
          && costs.to() == after.least(-1)
          && costs.from() < costs.to();
    } else if (reason instanceof Reason.Nearer nearer) {
      return nearer.from() == before.least(-1)
          && nearer.to() == after.least(-1)
          && nearer.from() > nearer.to();
    } else if (reason instanceof Reason.NothingNearer nothing) {
      return nothing.without() == before.least(-1)
          && nothing.with() == bestClaim(view)
          && nothing.with() >= nothing.without();
    } else if (reason instanceof Reason.WouldBring would) {
      return would.without() == before.least(-1)
          && would.with() == bestClaim(view)
          && would.with() < would.without();
    } else if (reason instanceof Reason.Concealed concealed) {
      return view.table().hands().line(concealed.line()).concealed();
    } else if (reason instanceof Reason.ToSpare spare) {
      int aim = player.aim(view);
      return spare.tiles() == Math.max(0, before.total() - 14 + before.least(aim));
    } else if (reason instanceof Reason.Blind blind) {
      return blind.tiles() == ((Move.Pass) move).blind();
    }
    return agreesInPlay(view, move, reason, before, after);
  }

  /** The hand in mind can be made, and is missing what is said. */
  private static boolean agreesWithHand(SeatView view, Reason.Aim aim, Player player) {
    PlainFacts facts = new PlainFacts(view);
    if (facts.dead(aim.hand())) {
      facts.out[view.offered()]--;
    }
    boolean nearest = facts.away(aim.hand()) == facts.least(aim.line());
    boolean own =
        player instanceof Judging judging && judging.handInMind(view) == aim.hand() || nearest;
    List<Integer> missing = facts.missing(aim.hand());
    return own
        && !facts.dead(aim.hand())
        && facts.possible(aim.hand(), facts.own)
        && view.table().hands().lineOf(aim.hand()) == aim.line()
        && aim.away() == facts.away(aim.hand())
        && aim.missing().equals(missing)
        && aim.away() == missing.size() - aim.filled()
        && aim.filled() <= facts.held[Tile.JOKER];
  }

  /** The lines as they are and as the claim leaves them, and a claim that was there. */
  private static boolean agrees(
      SeatView view, Reason.LeftClaim left, PlainFacts before, Player player) {
    PlainFacts with = new PlainFacts(view);
    claim(with, view, left.size(), left.jokers());
    return left.lines() == before.lines()
        && left.linesLeft() == with.lines()
        && ((Judging) player)
            .claims(view).stream()
                .anyMatch(
                    one ->
                        one.move().equals(new Move.Claim(left.size(), left.jokers()))
                            && one.worth() == left.times()
                            && one.objection() == left.objection());
  }

  private static boolean agreesInPlay(
      SeatView view, Move move, Reason reason, PlainFacts before, PlainFacts after) {
    if (reason instanceof Reason.JokersKept kept) {
      return kept.jokers() == after.held[Tile.JOKER];
    } else if (reason instanceof Reason.Redeems redeems) {
      return redeems.jokers() == after.held[Tile.JOKER]
          && view.exposures(redeems.owner()).stream()
              .anyMatch(laid -> laid.kind() == redeems.tile() && laid.jokers() > 0);
    } else if (reason instanceof Reason.NobodyTakesIt) {
      return ((Move.Discard) move).tile() == Tile.JOKER;
    } else if (reason instanceof Reason.Step step) {
      int most = 0;
      for (int seat = 0; seat < 4; seat++) {
        most = seat == view.seat() ? most : Math.max(most, view.exposures(seat).size());
      }
      return step.away() == before.least(-1)
          && step.draws() == view.wallLeft() / 4
          && step.exposures() == most;
    }
    int tile = ((Move.Discard) move).tile();
    if (reason instanceof Reason.Dead dead) {
      return dead.inView() == before.inView(dead.tile()) && deadHand(before, dead, view, tile);
    } else if (reason instanceof Reason.HerTile hers) {
      return before
          .left(view.exposures(hers.seat()), tile)
          .equals(new PlainFacts.Left(hers.lines(), true));
    } else if (reason instanceof Reason.NotHers hers) {
      return before
          .left(view.exposures(hers.seat()), tile)
          .equals(new PlainFacts.Left(hers.lines(), false));
    } else if (reason instanceof Reason.NobodyWants nobody) {
      return nobody.showing() == agreesThatNobodyWants(view, tile, before);
    } else if (reason instanceof Reason.LastOfItsKind last) {
      int copies = view.table().rules().tiles().copies(tile);
      return last.tile() == tile
          && last.faceUp() == view.faceUp(tile)
          && last.faceUp() == copies - 1;
    }
    return reason instanceof Reason.JustWentRound round
        && round.tile() == tile
        && view.discardTile(view.discards() - 1) == tile;
  }

  /** How many show an exposure and cannot want a tile; -1 where somebody can. */
  private static int agreesThatNobodyWants(SeatView view, int tile, PlainFacts before) {
    int showing = 0;
    for (int seat = 0; seat < 4; seat++) {
      if (seat != view.seat() && !view.exposures(seat).isEmpty() && !view.dead(seat)) {
        showing++;
        if (before.left(view.exposures(seat), tile).wanted()) {
          return -1;
        }
      }
    }
    return showing;
  }

  /** Some hand of the line wants the tile thrown, looks as near as any and lacks that kind. */
  private static boolean deadHand(PlainFacts before, Reason.Dead dead, SeatView view, int tile) {
    var hands = view.table().hands();
    for (int hand = 0; hand < hands.size(); hand++) {
      if (hands.lineOf(hand) == dead.line()
          && before.possible(hand, before.own)
          && before.lacking(hand) == dead.tile()
          && before.away(hand) <= before.least(-1)
          && before.rest(hand, tile, before.own) >= before.held[tile]) {
        return true;
      }
    }
    return false;
  }

  private static void move(PlainFacts facts, SeatView view, Move move) {
    if (move instanceof Move.Pass pass) {
      pass.own().forEach(kind -> facts.held[kind]--);
    } else if (move instanceof Move.Discard discard) {
      facts.held[discard.tile()]--;
      facts.out[discard.tile()]++;
    } else if (move instanceof Move.Exchange exchange) {
      facts.held[exchange.tile()]--;
      facts.out[exchange.tile()]++;
      facts.held[Tile.JOKER]++;
    } else if (move instanceof Move.Claim claim) {
      claim(facts, view, claim.size(), claim.jokers());
    }
  }

  private static void claim(PlainFacts facts, SeatView view, int size, int jokers) {
    facts.held[view.offered()] -= size - 1 - jokers;
    facts.out[view.offered()] += size - 1 - jokers;
    facts.held[Tile.JOKER] -= jokers;
    facts.own.add(new Exposure(view.offered(), size, jokers));
  }

  /** The least distance that a claim could bring; those that no hand allows are far. */
  private static int bestClaim(SeatView view) {
    int best = PlainFacts.NONE;
    for (int size = 3; size <= 6; size++) {
      for (int jokers = 0; jokers <= view.held(Tile.JOKER) && jokers < size; jokers++) {
        int naturals = size - 1 - jokers;
        if (naturals <= view.held(view.offered()) && view.rackSize() > size - 1) {
          PlainFacts facts = new PlainFacts(view);
          claim(facts, view, size, jokers);
          best = Math.min(best, facts.least(-1));
        }
      }
    }
    return best;
  }

  @Test
  void everyNumber_isTheOneOfTheView() {
    TableSetup setup = new TableSetup(TestTable.HANDS, TableRules.STANDARD);
    for (int deal = 0; decisions < DECISIONS; deal++) {
      List<Player> players = new ArrayList<>();
      for (int seat = 0; seat < 4; seat++) {
        String id = PLAYERS.get((deal + seat) % PLAYERS.size());
        Player player = Catalog.standard().type(id).orElseThrow().maker().get();
        players.add(
            new ExplainedPlayer(
                player, (view, move, reasons) -> check(view, move, reasons, player)));
      }
      new Game(setup, players, new GameListener() {})
          .play(Deal.of(TestTable.SEED, deal, setup.rules().tiles()));
    }

    assertThat(decisions).isGreaterThanOrEqualTo(DECISIONS);
    assertThat(seen.keySet())
        .containsAll(
            java.util.Arrays.stream(Reason.class.getPermittedSubclasses())
                .map(Class::getSimpleName)
                .toList());
  }

  /** Each cause of a choice between two tiles comes up in these games. */
  @Test
  void everyCauseOfAChoiceBetweenTwoTiles_comesUp() {
    TableSetup setup = new TableSetup(TestTable.HANDS, TableRules.STANDARD);
    Map<String, Integer> causes = new TreeMap<>();
    for (int deal = 0; deal < 12; deal++) {
      List<Player> players = new ArrayList<>();
      for (String id : List.of("watchful", "reckoner", "watchful", "reckoner")) {
        players.add(
            new ExplainedPlayer(
                Catalog.standard().type(id).orElseThrow().maker().get(),
                (view, move, reasons) ->
                    reasons.stream()
                        .filter(Reason.Rather.class::isInstance)
                        .map(one -> ((Reason.Rather) one).cause().getClass().getSimpleName())
                        .forEach(cause -> causes.merge(cause, 1, Integer::sum))));
      }
      new Game(setup, players, new GameListener() {})
          .play(Deal.of(TestTable.SEED, deal, setup.rules().tiles()));
    }
    causes.remove("Otherwise");
    assertThat(causes.keySet())
        .containsExactly("Either", "KeepsMore", "MoreOut", "Needed", "Safer");
  }

  @ParameterizedTest
  @CsvSource({
    "20, watchful reckoner nearest random-legal",
    "1, open-tiles nearest nearest nearest"
  })
  void playersThatAreListenedTo_playTheSame(int deals, String players) {
    TableSetup setup = new TableSetup(TestTable.HANDS, TableRules.STANDARD);
    List<Player> alone = new ArrayList<>();
    List<Player> heard = new ArrayList<>();
    for (String id : players.split(" ")) {
      var maker = Catalog.standard().type(id).orElseThrow().maker();
      alone.add(maker.get());
      heard.add(new ExplainedPlayer(maker.get(), (view, move, reasons) -> {}));
    }
    for (int deal = 0; deal < deals; deal++) {
      Deal same = Deal.of(TestTable.SEED, deal, setup.rules().tiles());
      assertThat(new Game(setup, heard, new GameListener() {}).play(same))
          .isEqualTo(new Game(setup, alone, new GameListener() {}).play(same));
    }
  }
}
