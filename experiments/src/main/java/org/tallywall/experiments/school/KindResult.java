package org.tallywall.experiments.school;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;
import org.tallywall.core.play.Seats;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Moments;

/**
 * What the decisions of one kind come to. Games are those of one player: a quarter of what the four
 * of a table decide.
 *
 * @param kind the kind
 * @param perGame such decisions of one player in a game
 * @param looked how many were looked at and count
 * @param leftOut how many could not be played on from
 * @param ahead in how many of those looked at another choice was ahead
 * @param lost points that such a decision loses
 * @param lostRange its range, where there is one
 * @param lostPerGame points that all such decisions of one player lose in a game
 * @param lostPerGameRange its range, where there is one
 * @param variance of the points lost in a game
 * @param clear whether a loss is told from 0 even if the allowance is shared by all kinds
 */
public record KindResult(
    Kind kind,
    double perGame,
    int looked,
    int leftOut,
    int ahead,
    double lost,
    Optional<Interval> lostRange,
    double lostPerGame,
    Optional<Interval> lostPerGameRange,
    double variance,
    boolean clear) {

  /** Of the decisions of a kind; none where none was looked at. */
  static Optional<KindResult> of(Kind kind, Counts counts, List<Judged> judged, int kinds) {
    List<Judged> here = judged.stream().filter(one -> one.kind() == kind).toList();
    List<Judged> counted = here.stream().filter(Judged::counts).toList();
    if (counted.isEmpty()) {
      return Optional.empty();
    }
    double level = SchoolResult.CONFIDENCE;
    Lost lost = Lost.of(counted, level);
    boolean clear =
        Lost.of(counted, 1 - (1 - level) / kinds).range().filter(at -> at.low() > 0).isPresent();
    Moments held = counts.of(kind);
    double perGame = held.mean() / Seats.COUNT;
    double ofCounts = held.n() < 2 ? 0 : held.variance() / held.n() / Seats.COUNT / Seats.COUNT;
    double variance = perGame * perGame * lost.variance() + lost.mean() * lost.mean() * ofCounts;
    return Optional.of(
        new KindResult(
            kind,
            perGame,
            counted.size(),
            here.size() - counted.size(),
            (int) counted.stream().filter(Judged::differs).count(),
            lost.mean(),
            lost.range(),
            perGame * lost.mean(),
            lost.range().map(range -> perGame(range, perGame, lost, ofCounts, counted.size())),
            variance,
            clear));
  }

  /** The range a game: that of a decision, wider by what is not known of how many there are. */
  private static Interval perGame(
      Interval range, double perGame, Lost lost, double ofCounts, int looked) {
    double reach =
        new TDistribution(null, looked - 1)
            .inverseCumulativeProbability((1 + SchoolResult.CONFIDENCE) / 2);
    double counting = reach * reach * lost.mean() * lost.mean() * ofCounts;
    double below = perGame * (lost.mean() - range.low());
    double above = perGame * (range.high() - lost.mean());
    double middle = perGame * lost.mean();
    return new Interval(
        middle - Math.sqrt(below * below + counting), middle + Math.sqrt(above * above + counting));
  }
}
