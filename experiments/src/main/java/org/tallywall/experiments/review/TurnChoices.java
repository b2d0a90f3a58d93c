package org.tallywall.experiments.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.sheet.Asking;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.strategies.habit.Judging;
import org.tallywall.strategies.habit.Weighed;
import org.tallywall.strategies.playout.FirstAnswer;

/**
 * What a sound person might consider in a turn: mahjong, each exchange with the discard that the
 * player would make then, and the discards that judgment ranks first, among them the one that keeps
 * most of the rack's worth and the one that risks least.
 */
final class TurnChoices {
  /** A discard that leaves less of the rack's worth is no plan but a way to play for the wall. */
  private static final double WORTH_A_LOOK = 0.3;

  /** Discards beside the first, where all of them give up the rack. */
  private static final int LEAST = 2;

  private final SeatView view;
  private final Player player;
  private final PositionSheet sheet;

  TurnChoices(SeatView view, Player player, PositionSheet sheet) {
    this.view = view;
    this.player = player;
    this.sheet = sheet;
  }

  /** The choices, those first that should be looked at if there is room for some alone. */
  List<List<Move>> list(Player judge) {
    List<List<Move>> all = new ArrayList<>();
    for (TurnChoice choice : LegalMoves.turn(view)) {
      if (choice instanceof TurnChoice.Mahjong) {
        all.add(List.of(new Move.Mahjong()));
      } else if (choice instanceof TurnChoice.Exchange) {
        FirstAnswer exchanges = new FirstAnswer(player);
        exchanges.turn(choice);
        all.add(Asking.put(sheet, exchanges, 0, (seen, move) -> {}));
      }
    }
    if (judge instanceof Judging judging) {
      discards(judging.discards(view)).forEach(move -> all.add(List.of(move)));
    }
    return all;
  }

  private static List<Move> discards(List<Weighed> ranked) {
    List<Move> moves = new ArrayList<>();
    ranked.stream()
        .max(Comparator.comparingDouble(Weighed::worth))
        .ifPresent(one -> moves.add(one.move()));
    ranked.stream()
        .filter(Weighed::read)
        .min(
            Comparator.comparingDouble(Weighed::risk)
                .thenComparing(Comparator.comparingDouble(Weighed::worth).reversed()))
        .ifPresent(one -> moves.add(one.move()));
    for (int at = 0; at < ranked.size(); at++) {
      if (at < LEAST || ranked.get(at).worth() >= WORTH_A_LOOK) {
        moves.add(ranked.get(at).move());
      }
    }
    return moves;
  }
}
