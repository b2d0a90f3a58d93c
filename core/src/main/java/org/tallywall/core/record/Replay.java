package org.tallywall.core.record;

import static org.tallywall.core.record.BreachException.require;

import java.util.List;
import java.util.Optional;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.rules.JokerRules;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.rules.WallRules;
import org.tallywall.core.text.Shown;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Checks a record event by event against the rules. It knows nothing of the game loop: it takes the
 * wall and the events, and says what is the first that the rules do not allow.
 */
public final class Replay {
  private final ConcreteHands hands;
  private final PlainHands plain;
  private final GameRecord game;
  private final TableRules rules;
  private final EventCursor events;
  private ReplayTable table;
  private EndCheck end;
  private ClaimCheck claims;
  private boolean paysForAll;

  private Replay(ConcreteHands hands, GameRecord game) {
    this.hands = hands;
    this.plain = new PlainHands(hands);
    this.game = game;
    this.rules = TableRules.of(game.header().rules());
    this.events = new EventCursor(game.events());
  }

  /**
   * Checks one game, whatever wall it has.
   *
   * @param hands the card with which it was played
   * @param game its record
   * @return the first breach, or nothing where all is as the rules say
   */
  public static Optional<Breach> check(ConcreteHands hands, GameRecord game) {
    return check(hands, game, false);
  }

  /**
   * Checks one game, and that its wall and dice are those that its seed and deal give. Games that
   * are set up by hand, with {@link org.tallywall.core.play.Deal#stacked}, have other walls.
   *
   * @param hands the card with which it was played
   * @param game its record
   * @return the first breach, or nothing where all is as the rules say
   */
  public static Optional<Breach> checkDealt(ConcreteHands hands, GameRecord game) {
    return check(hands, game, true);
  }

  private static Optional<Breach> check(ConcreteHands hands, GameRecord game, boolean dealt) {
    Replay replay;
    try {
      replay = new Replay(hands, game);
    } catch (IllegalArgumentException unknownRule) {
      return Optional.of(new Breach(-1, unknownRule.getMessage()));
    }
    try {
      replay.run(dealt);
      return Optional.empty();
    } catch (BreachException breach) {
      return Optional.of(new Breach(replay.events.last(), breach.getMessage()));
    }
  }

  private void run(boolean dealt) {
    String digest = hands.card().digest();
    require(
        digest.equals(game.header().card().digest()),
        "the record was played on another card: " + Shown.word(game.header().card().digest()));
    table = new ReplayTable(game, rules.tiles());
    if (dealt) {
      DealCheck.check(game, rules.tiles());
    }
    end = new EndCheck(plain, rules, table, game);
    claims = new ClaimCheck(plain, rules, table);
    if (declaredBeforePlay(rules.win().heavenly())) {
      events.finish();
      return;
    }
    PassCheck passes = new PassCheck(table, rules.charleston(), events);
    if (rules.charleston().first()) {
      boolean stopped = passes.firstRound();
      if (declaredBeforePlay(rules.win().earthlyBetween())) {
        events.finish();
        return;
      }
      stopped |= passes.stoppedAfterSeeing();
      if (!stopped) {
        passes.secondRound();
      }
    }
    passes.courtesy();
    table.count(0);
    turns();
    events.finish();
  }

  private boolean declaredBeforePlay(boolean allowed) {
    boolean mustDeclare = allowed && !rules.win().mayDecline() && complete(0);
    if (!mustDeclare && !(events.peek() instanceof GameEvent.Mahjong)) {
      return false;
    }
    GameEvent.Mahjong mahjong = declaration();
    require(allowed, "East may not declare at this moment (rule 2.6)");
    require(
        mahjong.seat() == 0 && mahjong.by().equals("deal"), "only East may declare (rule 2.6.4)");
    require(mahjong.losers().equals(GameEvent.Losers.NOBODY), "nobody else claims (rule 3.4)");
    end.win(mahjong, false);
    return true;
  }

  private GameEvent.Mahjong declaration() {
    return events.next(
        GameEvent.Mahjong.class, "mahjong: a complete hand is declared (rule 5.3.1)");
  }

  private void turns() {
    int seat = 0;
    String entry = "deal";
    int from = -1;
    while (true) {
      Integer thrown = turn(seat, entry, from);
      if (thrown == null) {
        return;
      }
      boolean lastWall = table.left() < lastTiles();
      boolean hot = end.hot(seat, thrown, lastWall);
      claims.offer(seat, thrown, lastWall);
      if (deadCalls(seat, thrown)) {
        return;
      }
      GameEvent next = events.peek();
      if (next instanceof GameEvent.Mahjong) {
        winOnDiscard(thrown, hot);
        return;
      } else if (next instanceof GameEvent.Claim) {
        from = seat;
        seat = claim(hot);
        entry = "discard";
      } else if (table.left() == 0) {
        events.next(GameEvent.WallGame.class, "the wall game (rule 7.2)");
        claims.nobody();
        end.noWin("wall-game");
        return;
      } else {
        GameEvent.Draw draw = events.next(GameEvent.Draw.class, "a draw (rule 3.2)");
        claims.nobody();
        require(draw.seat() == table.nextLive(seat), "the next in turn draws (rule 3.2)");
        table.draw(draw.seat(), draw.tile());
        seat = draw.seat();
        entry = "draw";
        from = -1;
      }
      table.count(seat);
    }
  }

  private int lastTiles() {
    int rule = rules.wall().lastTiles();
    return rule == WallRules.BY_DICE ? 2 * (game.dice().get(0) + game.dice().get(1)) : rule;
  }

  /** Checks a turn up to its discard, which it returns; null after a win. */
  private Integer turn(int seat, String entry, int from) {
    boolean completeAtFirst = complete(seat);
    int exchanges = 0;
    while (true) {
      boolean mustDeclare = !rules.win().mayDecline() && complete(seat);
      GameEvent next = events.peek();
      if (mustDeclare || next instanceof GameEvent.Mahjong) {
        GameEvent.Mahjong mahjong = declaration();
        String by = completeAtFirst ? entry : "exchange";
        require(mahjong.seat() == seat, "seat " + seat + " is on turn (rule 3.2)");
        require(mahjong.by().equals(by), "the hand was completed by " + by + " (rule 3.5.7)");
        require(mahjong.from() == (by.equals("discard") ? from : -1), "from (rule 3.5.7)");
        require(mahjong.losers().equals(GameEvent.Losers.NOBODY), "nobody else claims (rule 3.4)");
        end.win(mahjong, by.equals("discard") && paysForAll);
        return null;
      } else if (next instanceof GameEvent.Exchange) {
        exchange(seat, entry, exchanges++);
      } else {
        GameEvent.Discard discard = events.next(GameEvent.Discard.class, "a discard (rule 3.2)");
        require(discard.seat() == seat, "seat " + seat + " is on turn (rule 3.2)");
        table.discard(seat, discard.tile());
        table.count(-1);
        return discard.tile();
      }
    }
  }

  private boolean complete(int seat) {
    return !plain.complete(table.racks.get(seat), table.exposures.get(seat)).isEmpty();
  }

  private void exchange(int seat, String entry, int made) {
    GameEvent.Exchange exchange = events.next(GameEvent.Exchange.class, "an exchange");
    JokerRules jokers = rules.jokers();
    require(exchange.seat() == seat, "only the player on turn may exchange (rule 4.4.2)");
    require(
        exchange.owner() == seat ? jokers.own() : jokers.others(), "joker.exchange (rule 4.4.3)");
    require(made < jokers.perTurn(), "joker.exchangePerTurn (rule 4.4.4)");
    require(
        !entry.equals("discard") || jokers.afterClaim(), "joker.exchangeAfterClaim (rule 4.4.2)");
    table.redeem(seat, exchange.owner(), exchange.exposure(), exchange.tile());
  }

  private int claim(boolean hot) {
    GameEvent.Claim claim = events.next(GameEvent.Claim.class, "a claim");
    paysForAll = hot || end.oneHand(claim.seat());
    claims.expose(claim);
    return claim.seat();
  }

  private void winOnDiscard(int thrown, boolean hot) {
    GameEvent.Mahjong mahjong = events.next(GameEvent.Mahjong.class, "mahjong");
    claims.mahjong(mahjong);
    boolean paysAll = hot || end.oneHand(mahjong.seat());
    table.racks.get(mahjong.seat()).add(thrown);
    end.win(mahjong, paysAll);
  }

  /** Checks which hands were called dead; true where that ended the game. */
  private boolean deadCalls(int from, int thrown) {
    if (!rules.dead().called()) {
      return false;
    }
    for (int seat = 0; seat < 4 && table.live() > 1; seat++) {
      if (!table.dead[seat] && impossible(seat, from, thrown)) {
        GameEvent.Dead dead = events.next(GameEvent.Dead.class, "a dead hand (rule 6.5)");
        require(dead.seat() == seat, "the hand of seat " + seat + " is impossible (rule 6.1)");
        bury(seat);
      }
    }
    if (table.live() > 1) {
      return false;
    }
    boolean isVoid = rules.dead().threeVoid();
    if (isVoid) {
      events.next(GameEvent.VoidGame.class, "the void game (rule 6.3.3)");
    } else {
      events.next(GameEvent.WallGame.class, "the wall game (rule 6.3.3)");
    }
    end.noWin(isVoid ? "void" : "wall-game");
    return true;
  }

  /** By what all can see; the tile on offer can still be had by all but the discarder (6.2.3). */
  private boolean impossible(int seat, int from, int thrown) {
    int[] obtainable = new int[Tile.KINDS];
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      obtainable[kind] = rules.tiles().copies(kind) - table.faceUp[kind];
    }
    obtainable[Tile.JOKER] = rules.tiles().jokers() - table.jokersThrown;
    if (seat != from && (thrown != Tile.JOKER || rules.jokers().discardClaimable())) {
      obtainable[thrown]++;
    }
    return plain.impossible(table.exposures.get(seat), obtainable);
  }

  private void bury(int seat) {
    table.dead[seat] = true;
    List<Exposure> exposures = table.exposures.get(seat);
    if (exposures.isEmpty() || plain.fits(exposures)) {
      return;
    }
    int keep = plain.fitsConcealed(exposures) ? 0 : exposures.size() - 1;
    Rack rack = table.racks.get(seat);
    while (exposures.size() > keep) {
      Exposure last = exposures.get(exposures.size() - 1);
      rack.add(last.kind(), last.naturals());
      rack.add(Tile.JOKER, last.jokers());
      table.takeBack(seat);
    }
  }
}
