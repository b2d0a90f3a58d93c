package org.tallywall.strategies.guess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;

/**
 * Drawing again and again takes every rack as often as it weighs: against all racks that the tiles
 * left allow, each weighed by the definition, with counts made one by one.
 */
class OpponentDrawTest {
  private static final int STEPS = 40_000;
  private static final ConcreteHands CARD =
      TestTable.card(
          "{ \"tiles\": \"NNNN 111b 2222c 333d\", \"value\": 25 }",
          "{ \"tiles\": \"NNNN 111b 2222c 999d\", \"value\": 40 }");

  private static HandMadeView view() {
    return new HandMadeView(CARD, "5556667778889b").exposed(0, "NNNN 111b 2222c").thrown("3d");
  }

  private static int[] left() {
    int[] left = new int[Tile.KINDS];
    for (int tile : TileText.rack("33d 9d 5c EE JJ").tiles()) {
      left[tile]++;
    }
    return left;
  }

  /**
   * Of 40,000 steps, each with three racks proposed; a rack stays for less than four steps on the
   * average, so that they are as good as 10,000 independent draws, whose standard deviation is at
   * most 0.005. The window is four of them, which all twelve racks would leave by chance in less
   * than one of a thousand seeds.
   */
  @Test
  void racks_areDrawnAsOftenAsTheyWeigh() {
    OpponentDraw draw = new OpponentDraw(TraitWeights.of("reckoner"));
    draw.look(view(), 0, 2);
    RandomStream random = new RandomStream(new StreamKey(1, 2, Purpose.ROLLOUT, 0, 0, 3));
    int[] left = left();
    Map<String, Double> found = new TreeMap<>();
    draw.draw(left, 3, random);
    for (int step = 0; step < STEPS; step++) {
      draw.draw(left, 3, random);
      found.merge(draw.rack().toString(), 1.0 / STEPS, Double::sum);
      assertThat(draw.rack().total()).isEqualTo(2);
    }
    Map<String, Double> weighed = weighed();
    assertThat(weighed).hasSizeGreaterThan(8);
    weighed.forEach(
        (rack, share) ->
            assertThat(found.getOrDefault(rack, 0.0)).as(rack).isCloseTo(share, within(0.02)));
    assertThat(weighed.values()).anyMatch(share -> share > 0.1 && share < 0.9);
  }

  /** Every rack of two tiles left, with its share. */
  private static Map<String, Double> weighed() {
    SeatView view = view();
    LikelyHands hands = new LikelyHands();
    hands.look(view, 0);
    RackProposal proposal = new RackProposal();
    proposal.look(view, 0, 2);
    RackTraits traits = new RackTraits();
    traits.look(view, 0, proposal);
    TraitWeights weights = TraitWeights.of("reckoner");
    Map<String, Double> shares = new TreeMap<>();
    double sum = 0;
    int[] left = left();
    for (int one = 0; one < Tile.KINDS; one++) {
      for (int other = one; other < Tile.KINDS; other++) {
        double ways = ways(left, one, other);
        if (ways > 0) {
          Rack rack = Rack.of(one, other);
          traits.of(rack);
          double weight = ways * density(view, hands, rack) * weights.weigh(traits);
          shares.put(rack.toString(), weight);
          sum += weight;
        }
      }
    }
    double all = sum;
    shares.replaceAll((rack, weight) -> weight / all);
    return shares;
  }

  private static double ways(int[] left, int one, int other) {
    return one == other ? left[one] * (left[one] - 1) / 2.0 : left[one] * left[other];
  }

  /** How likely the rack is proposed, if all its tiles are told from one another. */
  private static double density(SeatView view, LikelyHands hands, Rack rack) {
    Reach reach = view.reach(0);
    double sum = 0;
    for (int hand = 0; hand < reach.size(); hand++) {
      double same = 0;
      double jokers = 0;
      for (int one = 0; one < Tile.KINDS; one++) {
        for (int other = one; other < Tile.KINDS; other++) {
          double ways = unseenWays(view, one, other);
          Rack like = Rack.of(one, other);
          boolean asMany = like.jokers() == rack.jokers();
          jokers += asMany ? ways : 0;
          same += asMany && serve(reach, hand, like) == serve(reach, hand, rack) ? ways : 0;
        }
      }
      int away = 3 - serve(reach, hand, rack) - rack.jokers();
      double distance = away < 1 ? 0 : LikelyDistance.inHundred(3, view.wallLeft(), away) + 2;
      sum += hands.weight(hand) * Math.pow(2, rack.jokers()) * jokers * distance / same;
    }
    return sum;
  }

  private static double unseenWays(SeatView view, int one, int other) {
    int first = view.unseen(one);
    return one == other ? first * (first - 1) / 2.0 : first * view.unseen(other);
  }

  /** The hand wants three more tiles, all of one kind. */
  private static int serve(Reach reach, int hand, Rack rack) {
    int three = TileText.tile("3d");
    int nine = TileText.tile("9d");
    boolean threes = reach.hand(hand).total(three) > 0;
    return Math.min(3, rack.held(threes ? three : nine));
  }
}
