package org.tallywall.core.record;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.MixedTable;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;

/** Records of seeded games of mixed players for tests, and changes to them. */
final class Records {
  static final ConcreteHands HANDS = new ConcreteHands(MixedTable.card());
  static final long SEED = 40_404L;

  private Records() {}

  /** Plays a deal and writes it down; the bits of the seating say who plays by lot. */
  static GameRecord play(TableRules rules, int deal, int seating) {
    GameRecorder recorder = new GameRecorder();
    Outcome outcome =
        new Game(new TableSetup(HANDS, rules), MixedTable.players(seating), recorder)
            .play(Deal.of(SEED, deal, rules.tiles()));
    GameRecord record = recorder.record(header(rules, deal));
    if (!record.end().points().equals(outcome.points())) {
      throw new AssertionError("the record has other points than the game");
    }
    return record;
  }

  static GameRecord.Header header(TableRules rules, int deal) {
    return new GameRecord.Header(
        "mixed",
        SEED,
        deal,
        deal,
        "",
        -1,
        new GameRecord.CardName(HANDS.card().name(), HANDS.card().digest()),
        rules.switches(),
        List.of("greedy", "any-move", "greedy", "any-move"));
  }

  /** The first game of mixed players, by the rules, in which something happens. */
  static GameRecord find(TableRules rules, Predicate<GameRecord> wanted) {
    for (int deal = 0; deal < 3000; deal++) {
      GameRecord record = play(rules, deal, deal % 16);
      if (wanted.test(record)) {
        return record;
      }
    }
    throw new AssertionError("no such game in 3,000");
  }

  /** The index of the first event of a kind that is like wanted. */
  static <E extends GameEvent> int index(GameRecord game, Class<E> kind, Predicate<E> like) {
    for (int at = 0; at < game.events().size(); at++) {
      GameEvent event = game.events().get(at);
      if (kind.isInstance(event) && like.test(kind.cast(event))) {
        return at;
      }
    }
    return -1;
  }

  static GameRecord with(GameRecord game, int at, GameEvent event) {
    return events(
        game,
        events -> {
          events.set(at, event);
          return events;
        });
  }

  static GameRecord inserted(GameRecord game, int at, GameEvent event) {
    return events(
        game,
        events -> {
          events.add(at, event);
          return events;
        });
  }

  static GameRecord without(GameRecord game, int at) {
    return events(
        game,
        events -> {
          events.remove(at);
          return events;
        });
  }

  static GameRecord events(GameRecord game, UnaryOperator<List<GameEvent>> change) {
    List<GameEvent> events = change.apply(new ArrayList<>(game.events()));
    return new GameRecord(game.header(), game.wall(), game.dice(), events, game.end());
  }

  static GameRecord wall(GameRecord game, UnaryOperator<List<Integer>> change) {
    List<Integer> wall = change.apply(new ArrayList<>(game.wall()));
    return new GameRecord(game.header(), wall, game.dice(), game.events(), game.end());
  }

  static GameRecord dice(GameRecord game, Integer... dice) {
    return new GameRecord(game.header(), game.wall(), List.of(dice), game.events(), game.end());
  }

  static GameRecord end(GameRecord game, UnaryOperator<GameRecord.End> change) {
    return new GameRecord(
        game.header(), game.wall(), game.dice(), game.events(), change.apply(game.end()));
  }
}
