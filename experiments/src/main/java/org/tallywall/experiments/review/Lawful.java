package org.tallywall.experiments.review;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tallywall.core.play.IllegalMoveException;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.Asking;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.playout.FirstAnswer;

/** Says by which rule a choice is not allowed. */
final class Lawful {
  /** Whatever a claim lays open may hold jokers. */
  private static final int MANY = 9;

  private final PositionSheet sheet;
  private final SeatView view;
  private final TableRules rules;

  Lawful(PositionSheet sheet) {
    this.sheet = sheet;
    this.view = sheet.view();
    this.rules = view.table().rules();
  }

  /**
   * Why a choice may not be made.
   *
   * @param moves its moves
   * @param then who would play on
   * @return the reason with its rule, or empty where it may
   */
  Optional<String> fault(List<Move> moves, Player then) {
    for (int at = 0; at < moves.size(); at++) {
      String fault = fault(moves, at);
      if (fault != null) {
        return Optional.of(fault);
      }
    }
    FirstAnswer player = new FirstAnswer(then);
    new MoveOpening(view, sheet.moment(), moves).set(player);
    try {
      Asking.put(sheet, player, 0, (seen, move) -> {});
      return Optional.empty();
    } catch (IllegalMoveException refused) {
      return Optional.of("the rack does not hold these tiles by then (rule 3.1.1)");
    }
  }

  private String fault(List<Move> moves, int at) {
    Move move = moves.get(at);
    if (move instanceof Move.Claim claim) {
      return claim(claim);
    } else if (move instanceof Move.Mahjong && at == 0) {
      return view.complete() ? null : "the 14 tiles are not a hand of the card (rule 5.2)";
    } else if (move instanceof Move.Exchange exchange) {
      return exchange(exchange, moves.subList(0, at));
    }
    return null;
  }

  private String claim(Move.Claim claim) {
    int kind = view.offered();
    int naturals = claim.size() - 1 - claim.jokers();
    if (kind == Tile.JOKER) {
      return rules.jokers().discardClaimable()
          ? null
          : "a discarded joker cannot be claimed (rule 3.3.3)";
    } else if (naturals > view.held(kind)) {
      return String.format(
          Locale.ROOT,
          "it takes %s more of %s from the rack, which holds %s (rule 3.3.5)",
          naturals,
          Tile.symbol(kind),
          view.held(kind));
    } else if (claim.jokers() > view.held(Tile.JOKER)) {
      return String.format(
          Locale.ROOT,
          "it takes %s jokers from the rack, which holds %s (rule 3.3.5)",
          claim.jokers(),
          view.held(Tile.JOKER));
    } else if (naturals < rules.claims().naturalsFromRack()) {
      return "too few naturals would come from the rack (rule 3.3.5)";
    } else if (view.rackSize() - claim.size() < 0) {
      return "no tile would be left to throw (rule 3.3.10)";
    }
    return LegalMoves.mayExpose(view, kind, claim.size(), claim.jokers())
        ? null
        : "no line that may be exposed fits all exposures then (rules 3.3.8 and 3.3.11)";
  }

  private String exchange(Move.Exchange exchange, List<Move> before) {
    boolean own = exchange.owner() == view.seat();
    if (own ? !rules.jokers().own() : !rules.jokers().others()) {
      return "jokers of %s are not exchanged at this table (rule 4.4.3)"
          .formatted(own ? "one's own exposures" : "others");
    } else if (before.stream().anyMatch(Move.Claim.class::isInstance)
        && !rules.jokers().afterClaim()) {
      return "after a claim no joker is exchanged at this table (rule 4.4.2)";
    }
    long exchanged = before.stream().filter(Move.Exchange.class::isInstance).count();
    if (exchanged >= rules.jokers().perTurn()) {
      return "that is one exchange too many for a turn at this table (rule 4.4.4)";
    }
    int jokers = before.stream().anyMatch(Move.Claim.class::isInstance) ? MANY : 0;
    for (Exposure laid : view.exposures(exchange.owner())) {
      jokers += laid.kind() == exchange.tile() ? laid.jokers() : 0;
    }
    long taken = before.stream().filter(exchange::equals).count();
    return taken < jokers
        ? null
        : "no joker is left there that stands for %s (rule 4.4.1)"
            .formatted(Tile.symbol(exchange.tile()));
  }
}
