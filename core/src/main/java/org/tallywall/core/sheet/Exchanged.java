package org.tallywall.core.sheet;

import java.util.List;
import java.util.function.IntUnaryOperator;
import org.tallywall.core.card.SuitExchange;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/** A sheet with its suits exchanged. */
final class Exchanged {
  private final IntUnaryOperator kinds;

  private Exchanged(IntUnaryOperator kinds) {
    this.kinds = kinds;
  }

  static SheetDraft of(SheetDraft draft, SuitExchange suits) {
    return new Exchanged(suits::kind).draft(draft);
  }

  private SheetDraft draft(SheetDraft from) {
    SheetDraft to = new SheetDraft();
    to.names.putAll(from.names);
    to.seat = from.seat;
    to.moment = moment(from.moment);
    to.wall = from.wall;
    for (int kind : from.rack.tiles()) {
      to.rack.add(kind(kind));
    }
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      for (Exposure laid : from.exposures.get(seat)) {
        to.exposures.get(seat).add(Exposure.of(kind(laid.kind()), laid.size(), laid.jokers()));
      }
    }
    from.discards.forEach(
        thrown -> to.discards.add(new SheetDraft.Thrown(kind(thrown.kind()), thrown.seat())));
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      to.unseen[kind(kind)] = from.unseen[kind];
    }
    from.passes.forEach((step, passed) -> passed(passed, to.passed(step)));
    to.courtesy = from.courtesy == null ? null : passed(from.courtesy, new SheetDraft.Passed());
    heard(from.heard, to.heard);
    to.scene = from.scene;
    to.players.addAll(from.players);
    from.expect.forEach(written -> to.expect.add(written(written)));
    from.never.forEach(written -> to.never.add(written(written)));
    to.because = from.because;
    return to;
  }

  private void heard(Heard from, Heard to) {
    to.dead.addAll(from.dead);
    to.stoppers.addAll(from.stoppers);
    System.arraycopy(from.courtesy, 0, to.courtesy, 0, to.courtesy.length);
    from.exchanges.forEach(one -> to.exchanges.add(one.of(kind(one.tile()), one.exposure())));
    from.lost.forEach(
        one -> to.lost.add(new SeatView.LostClaim(one.seat(), kind(one.tile()), one.mahjong())));
  }

  private SheetDraft.Passed passed(SheetDraft.Passed from, SheetDraft.Passed to) {
    to.given.addAll(all(from.given));
    to.received.addAll(all(from.received));
    System.arraycopy(from.blind, 0, to.blind, 0, to.blind.length);
    return to;
  }

  private int kind(int kind) {
    return kind < 0 ? kind : kinds.applyAsInt(kind);
  }

  private List<Integer> all(List<Integer> kinds) {
    return kinds.stream().map(this::kind).toList();
  }

  private Moment moment(Moment moment) {
    if (moment instanceof Moment.Turn turn) {
      return new Moment.Turn(kind(turn.drawn()), turn.claimed());
    }
    return moment instanceof Moment.Offer offer
        ? new Moment.Offer(kind(offer.tile()), offer.from())
        : moment;
  }

  private ChoiceReader.Written written(ChoiceReader.Written from) {
    List<MovePattern> moves = from.moves().stream().map(this::pattern).toList();
    return new ChoiceReader.Written(new Choice(from.choice().text(), moves), moves, from.line());
  }

  private MovePattern pattern(MovePattern from) {
    if (from instanceof MovePattern.Pass pass) {
      return new MovePattern.Pass(new Move.Pass(all(pass.pass().own()), pass.pass().blind()));
    } else if (from instanceof MovePattern.PassWithAny any) {
      return new MovePattern.PassWithAny(all(any.kinds()));
    } else if (from instanceof MovePattern.Exchange exchange) {
      return new MovePattern.Exchange(kind(exchange.tile()), exchange.owner());
    }
    return from instanceof MovePattern.Discard discard
        ? new MovePattern.Discard(all(discard.kinds()))
        : from;
  }
}
