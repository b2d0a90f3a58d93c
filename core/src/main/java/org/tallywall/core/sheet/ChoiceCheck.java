package org.tallywall.core.sheet;

import java.util.List;
import java.util.Locale;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.Seats;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Shown;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Checks that the choices of a sheet can be answers to its question. */
final class ChoiceCheck {
  private static final int PASSED = 3;

  private final SheetDraft draft;
  private final TableRules rules;
  private final Faults faults;

  ChoiceCheck(SheetDraft draft, TableRules rules, Faults faults) {
    this.draft = draft;
    this.rules = rules;
    this.faults = faults;
  }

  void check() {
    draft.expect.forEach(this::checkWanted);
    draft.never.forEach(this::check);
  }

  /** Checks a choice that somebody is to make; one that is ruled out need not be allowed. */
  void checkWanted(ChoiceReader.Written written) {
    check(written);
    checkPass(written);
  }

  /** A pass that is expected must be one that the rules allow. */
  private void checkPass(ChoiceReader.Written written) {
    if (written.moves().get(0) instanceof MovePattern.Pass wanted) {
      Move.Pass pass = wanted.pass();
      int blindMost =
          draft.moment instanceof Moment.Pass asked ? LegalMoves.blindMost(rules, asked.step()) : 0;
      if (pass.blind() > blindMost) {
        fault(
            written,
            String.format(Locale.ROOT, "at most %d may go on blind here (rule 2.3.1)", blindMost));
      } else if (pass.own().contains(Tile.JOKER) && !rules.charleston().jokersMayPass()) {
        fault(written, "a joker may not be passed (rule 2.1.2)");
      }
    }
  }

  private void fault(ChoiceReader.Written written, String why) {
    faults.fault(
        written.line().place(),
        String.format(Locale.ROOT, "\"%s\": %s", Shown.word(written.choice().text()), why));
  }

  private void check(ChoiceReader.Written written) {
    List<MovePattern> moves = written.moves();
    Rack rack = draft.rack.copy();
    for (int at = 0; at < moves.size(); at++) {
      MovePattern move = moves.get(at);
      String fault = at == 0 ? first(move) : further(moves.get(at - 1), move);
      if (fault == null) {
        fault = impossible(move, rack);
      }
      if (fault != null) {
        fault(written, fault);
        return;
      }
      if (move instanceof MovePattern.Exchange) {
        rack.add(Tile.JOKER);
      }
    }
  }

  private String first(MovePattern move) {
    boolean fits;
    String answers;
    if (draft.moment instanceof Moment.Pass || draft.moment instanceof Moment.CourtesyGive) {
      fits = move instanceof MovePattern.Pass || move instanceof MovePattern.PassWithAny;
      answers = "a pass is answered by \"pass\" and tiles";
    } else if (draft.moment instanceof Moment.Stop) {
      fits = is(move, Move.Stop.class);
      answers = "the question is answered by \"stop\" or \"go on\"";
    } else if (draft.moment instanceof Moment.CourtesyAsk) {
      fits = is(move, Move.Courtesy.class);
      answers = "the question is answered by \"courtesy\" and a number";
    } else if (draft.moment instanceof Moment.Turn) {
      fits = inTurn(move);
      answers = "a turn is answered by \"exchange\", \"mahjong\" or \"discard\"";
    } else {
      fits =
          move instanceof MovePattern.Claim
              || is(move, Move.Nothing.class)
              || is(move, Move.Mahjong.class);
      answers = "an offer is answered by \"nothing\", \"claim\" or \"mahjong\"";
    }
    return fits ? null : answers;
  }

  private static boolean inTurn(MovePattern move) {
    return move instanceof MovePattern.Exchange
        || move instanceof MovePattern.Discard
        || move instanceof MovePattern.AnyDiscard
        || is(move, Move.Mahjong.class);
  }

  private static boolean is(MovePattern move, Class<? extends Move> type) {
    return move instanceof MovePattern.Exactly exactly && type.isInstance(exactly.wanted());
  }

  private static String further(MovePattern before, MovePattern move) {
    if (!(before instanceof MovePattern.Exchange) && !(before instanceof MovePattern.Claim)) {
      return "nothing can follow here; the turn goes on only after an exchange or a claim";
    }
    return inTurn(move) ? null : "the turn goes on with \"exchange\", \"mahjong\" or \"discard\"";
  }

  /** Why nobody could make a move with these tiles, or null. */
  private String impossible(MovePattern move, Rack rack) {
    if (move instanceof MovePattern.Pass exactly) {
      return pass(exactly.pass(), rack);
    } else if (move instanceof MovePattern.PassWithAny any) {
      return held(any.kinds(), rack);
    } else if (move instanceof MovePattern.Discard discard) {
      return held(discard.kinds(), rack);
    } else if (move instanceof MovePattern.Exchange exchange
        && exchange.tile() != MovePattern.ANY) {
      return exchange(exchange, rack);
    }
    return null;
  }

  private String pass(Move.Pass pass, Rack rack) {
    int tiles = pass.own().size() + pass.blind();
    int wanted = draft.moment instanceof Moment.CourtesyGive give ? give.number() : PASSED;
    if (tiles != wanted) {
      return String.format(
          Locale.ROOT,
          "%s here; %d are passed, blind ones included",
          tiles == 1 ? "1 tile" : tiles + " tiles",
          wanted);
    }
    for (int kind : pass.own()) {
      long times = pass.own().stream().filter(other -> other == kind).count();
      if (rack.held(kind) < times) {
        return String.format(
            Locale.ROOT, "the rack holds %d of %s", rack.held(kind), Tile.symbol(kind));
      }
    }
    return null;
  }

  private static String held(List<Integer> kinds, Rack rack) {
    return kinds.stream().anyMatch(kind -> rack.held(kind) > 0)
        ? null
        : "the rack holds none of " + SheetWords.tiles(kinds);
  }

  private String exchange(MovePattern.Exchange exchange, Rack rack) {
    int tile = exchange.tile();
    if (rack.held(tile) == 0) {
      return "the rack holds no " + Tile.symbol(tile);
    }
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      boolean meant = exchange.owner() == MovePattern.ANY || exchange.owner() == seat;
      for (Exposure exposure : draft.exposures.get(seat)) {
        if (meant && exposure.kind() == tile && exposure.jokers() > 0) {
          return null;
        }
      }
    }
    boolean own = draft.moment instanceof Moment.Offer offer && offer.tile() == tile;
    return own
        ? null
        : String.format(
            Locale.ROOT, "no joker stands for %s in that seat's exposures", Tile.symbol(tile));
  }
}
