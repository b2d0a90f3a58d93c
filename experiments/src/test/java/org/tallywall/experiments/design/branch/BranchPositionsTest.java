package org.tallywall.experiments.design.branch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.apache.commons.math3.distribution.HypergeometricDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.rules.RulesReader;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;
import org.tallywall.experiments.deals.Tables;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.study.Extent;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Source;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyQuestion;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.experiments.tally.StudyTally;

/**
 * Branches at a decision whose worth is known exactly. Unseen tiles lie in every order with the
 * same chance, so how many of the tiles waited for come to the own draws is hypergeometric.
 *
 * <p>Each check takes a bound of 4.8916 standard errors (normal distribution, two-sided chance 1e-6
 * of a false alarm); the seed is fixed.
 */
@Tag("long")
class BranchPositionsTest {
  private static final double Z = 4.891638476;
  private static final String WAITS =
      """
      { "card": "Breakwater test card", "families": [ { "family": "Waits", "lines": [
        { "id": "W1", "tiles": "FFFF 2222x 3333x 5y 7y", "value": 30 },
        { "id": "W2", "tiles": "FFFF 2222x 3333x 5y 8y", "value": 30 },
        { "id": "W3", "tiles": "FFFF 2222x 3333x 6y 7y", "value": 30 },
        { "id": "W4", "tiles": "FFFF 2222x 3333x 6y 9y", "value": 30 },
        { "id": "W5", "tiles": "RRRR GGGG 0000 99x", "value": 25 } ] } ] }
      """;
  private static final String DANGER =
      """
      { "card": "Breakwater test card", "families": [ { "family": "Pairs", "lines": [
        { "id": "P1", "tiles": "FFFF 2222x 3333x 55y", "value": 30 },
        { "id": "P2", "tiles": "RRRR GGGG 0000 99x", "value": 30 },
        { "id": "P3", "tiles": "RRRR GGGG 0000 88x", "value": 30 } ] } ] }
      """;
  private static final String RULES =
      """
      { "charleston.first": "NONE", "charleston.courtesy": "NONE", "dead.calls": "OFF",
        "score.jokerless": 1 }
      """;
  private static final String TWELVE = "FFFF2222b3333b";

  private static final TableRules TABLE = rules();

  private static TableRules rules() {
    Faults faults = new Faults();
    TableRules rules = RulesReader.read(LocatedJson.read(RULES, faults), faults);
    assertThat(faults.faults()).isEmpty();
    return rules;
  }

  private static List<Integer> kinds(String tiles) {
    Rack rack = TileText.rack(tiles);
    List<Integer> kinds = new ArrayList<>();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      kinds.addAll(Collections.nCopies(rack.held(kind), kind));
    }
    return kinds;
  }

  /** Tiles still to be dealt out by a test. */
  private static final class Box {
    private final List<Integer> left = new ArrayList<>();

    Box() {
      Arrays.stream(TABLE.tiles().tiles()).forEach(left::add);
    }

    List<Integer> take(String tiles) {
      List<Integer> taken = new ArrayList<>();
      for (int kind : kinds(tiles)) {
        taken.add(take(kind));
      }
      return taken;
    }

    int take(int kind) {
      assertThat(left.remove((Integer) kind)).isTrue();
      return kind;
    }

    /** Takes so many of the tiles that are left, but none of the kinds named. */
    List<Integer> takeOther(int number, String but) {
      List<Integer> refused = kinds(but);
      List<Integer> taken =
          left.stream().filter(kind -> !refused.contains(kind)).limit(number).toList();
      taken.forEach(this::take);
      return new ArrayList<>(taken);
    }
  }

  private static void shuffle(List<Integer> tiles, long deal) {
    int[] order = tiles.stream().mapToInt(Integer::intValue).toArray();
    new RandomStream(new StreamKey(16, deal, Purpose.ROLLOUT, 0, 0, 0))
        .shuffle(order, order.length);
    for (int at = 0; at < order.length; at++) {
      tiles.set(at, order[at]);
    }
  }

  /** A deal with these racks, East's of fourteen tiles, and the wall in order. */
  private static Deal deal(long number, List<List<Integer>> racks, List<Integer> wall) {
    int[] tiles = new int[TABLE.tiles().size()];
    int[] next = new int[4];
    for (int at = 0; at < Deal.DEALT; at++) {
      int seat = Deal.dealtTo(at);
      tiles[at] = racks.get(seat).get(next[seat]++);
    }
    for (int at = 0; at < wall.size(); at++) {
      tiles[Deal.DEALT + at] = wall.get(at);
    }
    return Deal.stacked(16, number, tiles, 3, 4);
  }

  private static List<Deal> deals(int number, LongFunction<Deal> source) {
    return LongStream.range(0, number).mapToObj(source).toList();
  }

  private static FiringTally play(
      String cardText, Robot.Choice choice, int wall, List<Deal> source) {
    Card card = CardFile.json("card", cardText).orThrow();
    TableSetup setup = new TableSetup(new ConcreteHands(card), TABLE);
    BranchDesign design =
        new BranchDesign(
            BranchMoment.DISCARD,
            new Cells(Map.of(Feature.WALL, List.of(wall))),
            Optional.empty(),
            List.of(BranchChoice.of(BranchOption.OWN_NEED), BranchChoice.of(BranchOption.SAFEST)),
            Robot.spec(choice),
            Robot.spec(choice),
            List.of(0));
    Study study =
        new Study(
            new StudyQuestion(
                "waits", "", Optional.of(Measure.WIN_RATE), List.of(Measure.POINTS), 0.95),
            card,
            TABLE,
            design,
            new Extent(16, source.size(), 0),
            new Source(Path.of("s"), Path.of("c"), Optional.empty(), Optional.empty()));
    Tables tables =
        new Tables(
            study, setup, false, place -> place, number -> source.get((int) number), new Pulse());
    BranchDeals branches = new BranchDeals(study, design, tables);
    StudyTally tally = new StudyTally(PlayedDesign.planOf(study), setup);
    for (long number = 0; number < source.size(); number++) {
      branches.play(number, tally);
    }
    return tally.firing(0);
  }

  /**
   * Sixty unseen tiles, ten more own draws, no calls: throw one tile and wait with some tiles, or
   * throw the other and wait with others. East holds 5c and 6c beside twelve tiles of a hand. The
   * chances are 1 − C(60−m, 10) / C(60, 10) for m tiles waited for, by sums of binomials.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "three outs or two others, 0, 3, 2, 0.427235534775, 0.307909604520, 0.488967157813",
    "four outs or three of which two are shared, 2, 2, 1, 0.527720528674, 0.427235534775, 0.269156233659"
  })
  void twoWaits_onTheSameTiles_differAsMuchAsTheExactChancesSay(
      String name, int sevens, int eights, int nines, double a, double b, double apart) {
    int deals = 10_000;
    int five = TileText.tile("5c");
    int six = TileText.tile("6c");
    Robot.Choice choice = new Robot.Choice(six, Robot.NOTHING, six, five);

    FiringTally played =
        play(WAITS, choice, 99, deals(deals, number -> waits(number, sevens, eights, nines)));

    double difference = played.effect(0).difference().value().doubleValue() / deals;
    double square = played.effect(0).differenceSquared().value().doubleValue() / deals;
    double variance = apart - (b - a) * (b - a);
    assertThat(played.games()).isEqualTo(deals);
    assertThat(Math.abs(difference - (b - a))).isLessThan(Z * Math.sqrt(variance / deals));
    assertThat(Math.abs(square - apart)).isLessThan(Z * Math.sqrt(apart * (1 - apart) / deals));
  }

  /** East's first discard decides; South wins on the own draw after ten more draws of East. */
  private static Deal waits(long number, int sevens, int eights, int nines) {
    Box box = new Box();
    List<List<Integer>> racks = new ArrayList<>();
    racks.add(box.take(TWELVE + "5c6c"));
    racks.add(box.take("RRRRGGGG00009d"));
    int last = box.take(TileText.tile("9d"));
    List<Integer> pool = new ArrayList<>();
    for (int copy = 0; copy < sevens; copy++) {
      pool.addAll(box.take("7c"));
    }
    for (int copy = 0; copy < eights; copy++) {
      pool.addAll(box.take("8c"));
    }
    for (int copy = 0; copy < nines; copy++) {
      pool.addAll(box.take("9c"));
    }
    String live = "5c7c8c9c9d8dJ";
    pool.addAll(box.takeOther(60 - pool.size(), live));
    shuffle(pool, number);
    List<Integer> rest = new ArrayList<>(box.left);
    racks.add(new ArrayList<>(rest.subList(0, 13)));
    racks.add(new ArrayList<>(rest.subList(13, 26)));
    List<Integer> wall = new ArrayList<>(pool.subList(0, 40));
    wall.add(last);
    wall.addAll(pool.subList(40, 60));
    wall.addAll(rest.subList(26, rest.size()));
    return deal(number, racks, wall);
  }

  /**
   * East is one away with three tiles to wait for, and draws the tile on which South wins in every
   * second deal. To throw it and play on is worth P · 180 / 2 − 60 / 2 points: a win on the own
   * draw brings 6 times 30 points, the tile costs twice 30 in every second deal. To keep it and
   * break the hand is worth nothing. With the pool of unseen tiles of this table P falls from 0.48
   * to 0.19, so that playing on is right down to 35 tiles in the wall and wrong from 19 on.
   */
  @ParameterizedTest
  @CsvSource({"4, 83", "10, 59", "16, 35", "20, 19", "22, 11"})
  void playOnOrHoldBack_wherePointOfChangeIsKnown_isFoundAgain(int draw, int wall) {
    int deals = 10_000;
    int nine = TileText.tile("9d");
    Robot.Choice choice = new Robot.Choice(TileText.tile("W"), nine, nine, TileText.tile("5c"));
    int own = 24 - draw;
    double chance = 1 - new HypergeometricDistribution(wall + 20, 3, own).probability(0);
    double worth = chance * 90 - 30;
    double square = chance * 180 * 180 / 2 + 60 * 60 / 2.0;

    FiringTally played = play(DANGER, choice, wall, deals(deals, number -> danger(number, draw)));

    double difference = played.effect(1).difference().value().doubleValue() / deals;
    double error = Math.sqrt((square - worth * worth) / deals);
    assertThat(played.games()).isEqualTo(deals);
    assertThat(Math.abs(difference + worth)).isLessThan(Z * error);
    assertThat(Math.abs(worth)).isGreaterThan(Z * error);
    assertThat(difference < 0).isEqualTo(wall >= 35);
  }

  private static Deal danger(long number, int draw) {
    Box box = new Box();
    RandomStream random = new RandomStream(new StreamKey(16, number, Purpose.ROLLOUT, 1, 0, 0));
    boolean waitsForIt = random.below(2) == 0;
    List<Integer> east = box.take(TWELVE + "5cW");
    List<Integer> south = box.take("RRRRGGGG0000" + (waitsForIt ? "9d" : "8d"));
    int danger = box.take(TileText.tile("9d"));
    int before = 4 * draw - 1;
    List<Integer> early = box.takeOther(before, "5c8d9dJSSS");
    List<Integer> pool = box.take("5c5c5c");
    List<Integer> hidden = box.take(waitsForIt ? "9d9d8d8d8d8d" : "9d9d9d8d8d8d");
    pool.addAll(box.left);
    shuffle(pool, number);
    // Tiles that could win for South stay in the two racks that never throw them.
    List<Integer> racks = new ArrayList<>(pool.subList(0, 26 - hidden.size()));
    List<Integer> rest = new ArrayList<>(pool.subList(26 - hidden.size(), pool.size()));
    racks.addAll(hidden);
    List<Integer> wall = new ArrayList<>(early);
    wall.add(danger);
    wall.addAll(rest);
    return deal(
        number,
        List.of(east, south, racks.subList(0, 13), racks.subList(13, 26)),
        Collections.unmodifiableList(wall));
  }
}
