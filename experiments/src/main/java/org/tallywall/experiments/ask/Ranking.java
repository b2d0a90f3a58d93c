package org.tallywall.experiments.ask;

import java.util.List;
import org.tallywall.core.play.Player;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.sheet.SheetView;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.habit.Judging;
import org.tallywall.strategies.habit.Weighed;

/**
 * The choices of a position as a player ranks them.
 *
 * @param what what is ranked, in a word or two
 * @param choices the best first; none where the player has no judgment to tell, or nothing is to be
 *     ranked
 */
public record Ranking(String what, List<Weighed> choices) {
  private static final Ranking NONE = new Ranking("", List.of());

  /**
   * Copies the choices.
   *
   * @param what what is ranked
   * @param choices the best first
   */
  public Ranking {
    choices = List.copyOf(choices);
  }

  /**
   * Has a player rank what it could do first.
   *
   * @param sheet the position
   * @param player who is asked
   * @param most how many choices at most
   * @return the ranking
   */
  public static Ranking of(PositionSheet sheet, Player player, int most) {
    Ranking all = player instanceof Judging judging ? all(sheet, judging) : NONE;
    return new Ranking(all.what(), all.choices().stream().limit(most).toList());
  }

  private static Ranking all(PositionSheet sheet, Judging judging) {
    SheetView view = sheet.view();
    Moment moment = sheet.moment();
    if (moment instanceof Moment.Pass pass) {
      return new Ranking("tiles to pass", judging.passes(view, pass.step()));
    } else if (view.complete() || view.offered() == Tile.JOKER) {
      return NONE;
    } else if (moment instanceof Moment.Turn) {
      return new Ranking("discards", judging.discards(view));
    }
    return moment instanceof Moment.Offer ? new Ranking("answers", judging.claims(view)) : NONE;
  }
}
