package org.tallywall.experiments.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import org.tallywall.core.play.TableSetup;

/**
 * Everything that a study counts, of whatever design. Whole numbers only, so that the blocks of a
 * run may be added in any order.
 */
public final class StudyTally {
  private final TallyPlan plan;
  private final List<TableTally> arms;
  private final List<PairTally> pairs;
  private final List<FiringTally> firings;
  private final List<ContestTally> contests;
  private long deals;
  private long games;

  /**
   * Nothing counted yet.
   *
   * @param plan what is counted
   * @param setup the card and the rules
   */
  public StudyTally(TallyPlan plan, TableSetup setup) {
    this.plan = plan;
    this.arms = IntStream.range(0, plan.arms()).mapToObj(arm -> new TableTally(setup)).toList();
    this.pairs =
        IntStream.range(0, plan.pairs() * plan.measures()).mapToObj(at -> new PairTally()).toList();
    this.firings =
        IntStream.range(0, plan.firings())
            .mapToObj(at -> new FiringTally(plan.measures()))
            .toList();
    this.contests = IntStream.range(0, plan.tables()).mapToObj(at -> new ContestTally()).toList();
  }

  /**
   * Carries all numbers out or in.
   *
   * @param carrier writes or reads them
   */
  public void carry(Carrier carrier) {
    carrier.part("ways of playing");
    arms.forEach(arm -> arm.carry(carrier));
    carrier.part("comparisons");
    pairs.forEach(pair -> pair.carry(carrier));
    carrier.part("habits");
    firings.forEach(firing -> firing.carry(carrier));
    carrier.part("tables");
    contests.forEach(contest -> contest.carry(carrier));
    carrier.part("deals and games");
    deals = carrier.carry(deals);
    games = carrier.carry(games);
  }

  /**
   * Adds what another tally of the same study counted.
   *
   * @param other the other tally
   * @throws IllegalArgumentException if it counts other things
   */
  public void add(StudyTally other) {
    if (!plan.equals(other.plan)) {
      throw new IllegalArgumentException("tallies of different studies");
    }
    addAll(arms, other.arms, TableTally::add);
    addAll(pairs, other.pairs, PairTally::add);
    addAll(firings, other.firings, FiringTally::add);
    addAll(contests, other.contests, ContestTally::add);
    deals += other.deals;
    games += other.games;
  }

  private static <T> void addAll(List<T> sums, List<T> more, BiConsumer<T, T> adder) {
    for (int at = 0; at < sums.size(); at++) {
      adder.accept(sums.get(at), more.get(at));
    }
  }

  /**
   * Counts a deal that was played to its end.
   *
   * @param played games played on it
   */
  public void endDeal(int played) {
    deals++;
    games += played;
  }

  /**
   * What is counted.
   *
   * @return the plan
   */
  public TallyPlan plan() {
    return plan;
  }

  /**
   * One way of playing.
   *
   * @param arm its place in the study, from 0
   * @return its tally, live
   */
  public TableTally arm(int arm) {
    return arms.get(arm);
  }

  /**
   * One measure of one comparison.
   *
   * @param pair the comparison, from 0
   * @param measure the measure's place in the study, from 0
   * @return its tally, live
   */
  public PairTally pair(int pair, int measure) {
    return pairs.get(pair * plan.measures() + measure);
  }

  /**
   * The games in which one habit came into play.
   *
   * @param firing the habit, from 0
   * @return its tally, live
   */
  public FiringTally firing(int firing) {
    return firings.get(firing);
  }

  /**
   * The tables of a round-robin.
   *
   * @return their tallies, live, in order
   */
  public List<ContestTally> contests() {
    return new ArrayList<>(contests);
  }

  /**
   * Deals played.
   *
   * @return how many
   */
  public long deals() {
    return deals;
  }

  /**
   * Games played.
   *
   * @return how many; a game read at several seats is one
   */
  public long games() {
    return games;
  }
}
