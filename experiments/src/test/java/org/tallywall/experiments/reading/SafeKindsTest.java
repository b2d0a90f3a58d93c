package org.tallywall.experiments.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TrialDiscard;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.player.NearestPlayer;

/**
 * What is called a fact is tried by force: every rack that a seat can hold by what is out of view
 * is put before the engine, with every tile thrown.
 */
class SafeKindsTest {
  private static final int OTHER = LatePosition.WATCHED;
  private static final Map<String, Object> NO_EXCHANGE = Map.of("joker.exchangeAfterClaim", false);

  private final List<ClaimChoice> legal = new ArrayList<>();
  private final HandMeter meter = new HandMeter();
  private final Map<List<Exposure>, Reach> reaches = new HashMap<>();
  private int proofs;
  private int open;

  /** Notes what it could claim, and claims nothing. */
  private final class Noting extends ForwardingPlayer {
    Noting() {
      super(new NearestPlayer());
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      if (view.seat() == OTHER) {
        legal.addAll(LegalMoves.exposures(view));
      }
      return ClaimChoice.nothing();
    }
  }

  private static TableSetup setup(String card, TableRules rules) {
    return new TableSetup(new ConcreteHands(CardFile.read(Path.of(card)).orThrow()), rules);
  }

  /** Without exchanges after a claim, a fact is said exactly where no rack can take the tile. */
  @ParameterizedTest
  @CsvSource({
    "scenes/heron-reach/card.json, 0, 10, 2",
    "scenes/heron-reach/card.json, 500, 501, 3",
    "cards/kite-hill.json, 0, 6, 2"
  })
  void facts_areSaidWhereNoRackCanTakeTheTile_andNowhereElse(
      String card, int from, int to, int concealed) {
    TableSetup setup = setup(card, TableRules.of(NO_EXCHANGE));
    for (int number = from; number < to; number++) {
      SeatView view = LatePosition.of(setup, number, concealed);
      long[] taken = force(view, false);
      SafeKinds safe = new SafeKinds(view);
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        if (view.held(kind) > 0) {
          String where = number + ", " + Tile.symbol(kind);
          boolean wins = (taken[0] >>> kind & 1) != 0;
          boolean claims = (taken[1] >>> kind & 1) != 0;
          assertThat(safe.fromWin(OTHER, kind) == Proof.NONE).as("win " + where).isEqualTo(wins);
          assertThat(safe.fromClaim(OTHER, kind) == Proof.NONE)
              .as("claim " + where)
              .isEqualTo(claims);
          proofs += wins ? 0 : 1;
          open += wins ? 1 : 0;
        }
      }
    }
    assertThat(proofs).isPositive();
    assertThat(open).isPositive();
  }

  @Tag("long")
  @ParameterizedTest
  @CsvSource({
    "scenes/heron-reach/card.json, 10, 80, 2",
    "scenes/heron-reach/card.json, 501, 508, 3",
    "cards/saltmarsh-quay.json, 0, 60, 2",
    "cards/pebble-cove.json, 0, 60, 2",
    "cards/lantern-street.json, 0, 60, 2",
    "cards/kite-hill.json, 6, 60, 2"
  })
  void facts_ofManyPositions_areSaidWhereNoRackCanTakeTheTile(
      String card, int from, int to, int concealed) {
    facts_areSaidWhereNoRackCanTakeTheTile_andNowhereElse(card, from, to, concealed);
    facts_withExchanges_holdAgainstEveryRack(card, from, to, concealed);
  }

  /** With them, no rack wins, not even by claiming first and redeeming jokers then. */
  @ParameterizedTest
  @CsvSource({"scenes/heron-reach/card.json, 0, 15, 2", "cards/lantern-street.json, 0, 5, 2"})
  void facts_withExchanges_holdAgainstEveryRack(String card, int from, int to, int concealed) {
    TableSetup setup = setup(card, TableRules.STANDARD);
    for (int number = from; number < to; number++) {
      SeatView view = LatePosition.of(setup, number, concealed);
      long[] taken = force(view, true);
      SafeKinds safe = new SafeKinds(view);
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        if (view.held(kind) > 0 && safe.fromWin(OTHER, kind) != Proof.NONE) {
          assertThat(taken[0] >>> kind & 1).as(number + ", " + Tile.symbol(kind)).isZero();
          proofs++;
        }
      }
    }
    assertThat(proofs).isPositive();
  }

  private TrialDiscard trial(SeatView view) {
    return new TrialDiscard(view.table(), Collections.nCopies(Seats.COUNT, (Player) new Noting()));
  }

  /** Which kinds some rack can win on, and which some rack can claim, by bits. */
  private long[] force(SeatView view, boolean exchanges) {
    TrialDiscard trial = trial(view);
    Position position = new Position();
    position.begin(view, new RandomStream(new StreamKey(1, 0, Purpose.DECISION, 0, 0, 0)));
    int concealed = 13 - view.exposures(OTHER).stream().mapToInt(Exposure::size).sum();
    long[] taken = new long[2];
    racks(
        view,
        0,
        concealed,
        position.rack(OTHER),
        () -> {
          for (int kind = 0; kind < Tile.KINDS; kind++) {
            if (view.held(kind) > 0) {
              trial.throwNow(position, kind);
              legal.clear();
              boolean wins = (trial.mayWin() >> OTHER & 1) != 0;
              trial.laysOpen();
              taken[1] |= legal.isEmpty() ? 0 : 1L << kind;
              wins |= exchanges && winsByExchange(view, position.rack(OTHER), kind);
              taken[0] |= wins ? 1L << kind : 0;
            }
          }
        });
    return taken;
  }

  /** Goes through all racks of a size that the tiles out of view allow. */
  private static void racks(SeatView view, int from, int size, Rack rack, Runnable each) {
    if (size == 0) {
      each.run();
      return;
    }
    for (int kind = from; kind < Tile.KINDS; kind++) {
      if (rack.held(kind) < view.unseen(kind)) {
        rack.add(kind);
        racks(view, kind, size - 1, rack, each);
        rack.remove(kind);
      }
    }
  }

  private boolean winsByExchange(SeatView view, Rack held, int kind) {
    for (ClaimChoice choice : legal) {
      ClaimChoice.Expose laid = (ClaimChoice.Expose) choice;
      Rack rack = held.copy();
      rack.remove(kind, laid.size() - 1 - laid.jokers());
      rack.remove(Tile.JOKER, laid.jokers());
      List<List<Exposure>> table = new ArrayList<>();
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        table.add(new ArrayList<>(view.exposures(seat)));
      }
      table.get(OTHER).add(Exposure.of(kind, laid.size(), laid.jokers()));
      if (exchangesToWin(view.table().hands(), rack, table)) {
        return true;
      }
    }
    return false;
  }

  private boolean exchangesToWin(ConcreteHands hands, Rack rack, List<List<Exposure>> table) {
    meter.hold(rack);
    Reach reach = reaches.computeIfAbsent(List.copyOf(table.get(OTHER)), hands::reach);
    if (meter.least(reach) == 0) {
      return true;
    }
    for (List<Exposure> shown : table) {
      for (int at = 0; at < shown.size(); at++) {
        Exposure exposure = shown.get(at);
        if (exposure.jokers() > 0 && rack.held(exposure.kind()) > 0) {
          Rack richer = rack.copy();
          richer.remove(exposure.kind());
          richer.add(Tile.JOKER);
          shown.set(at, exposure.redeemed());
          boolean wins = exchangesToWin(hands, richer, table);
          shown.set(at, exposure);
          if (wins) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static SeatView view(String text, TableRules rules) {
    return PositionSheet.of("typed", text, setup("scenes/heron-reach/card.json", rules)).view();
  }

  /**
   * Seat 2 needs 777c FFFF; three F are out of view and no joker is. With 77c FFF 4b she claims the
   * 7c for a pung, gives the 4b for the joker of her 444bJ, and is complete.
   */
  @Test
  void fact_isNotSaid_whereAClaimAndAnExchangeWin() {
    String text =
        "seat 0\nmoment turn\nwall 30\nrack 2233b 7c 2233d NEWSR\nexposed 2 111b 444bJ\n"
            + "discards 7c FFFFF JJJJJJJ\n";
    SeatView view = view(text, TableRules.STANDARD);
    Position position = new Position();
    position.begin(view, new RandomStream(new StreamKey(1, 0, Purpose.DECISION, 0, 0, 0)));
    position.rack(OTHER).set(TileText.rack("77c FFF 4b"));
    TrialDiscard trial = trial(view);
    trial.throwNow(position, kind("7c"));
    trial.laysOpen();

    assertThat(trial.mayWin()).isZero();
    assertThat(winsByExchange(view, position.rack(OTHER), kind("7c"))).isTrue();
    assertThat(new SafeKinds(view).fromWin(OTHER, kind("7c"))).isEqualTo(Proof.NONE);
    SafeKinds without = new SafeKinds(view(text, TableRules.of(NO_EXCHANGE)));
    assertThat(without.fromWin(OTHER, kind("7c"))).isEqualTo(Proof.OUT);
    assertThat(without.outOf(kind("7c"))).isEmpty();
  }

  /** By hand: NNNN SSS leave H1, of which 11d is dead, so that 5d and 9d go with it. */
  @Test
  void reasons_ofOneScene_areThoseThatATeacherGives() {
    SafeKinds safe =
        new SafeKinds(
            view(
                "seat 0\nmoment turn\nwall 36\nrack 9b 6c 2223455d W G 00 F\n"
                    + "exposed 2 NNNJ SSS\n"
                    + "discards 12333444566677888b 12223444555566677999c 1114666788899d NEEEW"
                    + " RRGGG FFF\n",
                TableRules.STANDARD));

    assertThat(safe.fromWin(2, kind("W"))).isEqualTo(Proof.NOT_ON_CARD);
    assertThat(safe.fromWin(2, kind("6c"))).isEqualTo(Proof.NOT_HERS);
    assertThat(safe.fromWin(2, kind("9b"))).isEqualTo(Proof.NONE);
    assertThat(safe.fromWin(2, kind("5d"))).isEqualTo(Proof.OUT);
    assertThat(safe.outOf(kind("5d"))).containsExactly(kind("1d"));
    assertThat(safe.fromClaim(2, kind("5d"))).isEqualTo(Proof.NO_GROUP);
    assertThat(safe.fromClaim(2, kind("9b"))).isEqualTo(Proof.NONE);
    assertThat(safe.fromWin(2, Tile.JOKER)).isEqualTo(Proof.JOKER);
    // Seat 1 shows nothing: 6c stands in lines, and only facts about all hands would hold.
    assertThat(safe.fromWin(1, kind("6c"))).isEqualTo(Proof.NONE);
  }

  private static int kind(String tile) {
    return TileText.rack(tile).tiles()[0];
  }
}
