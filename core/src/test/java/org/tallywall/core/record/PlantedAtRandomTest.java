package org.tallywall.core.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.MixedTable;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Tile;

/**
 * Breaches planted anywhere in games of mixed players by six tables of rules: only changes that no
 * legal game could show, so each must be found, and not before the event at which it stands.
 */
@Tag("long")
class PlantedAtRandomTest {
  private static final int GAMES = 240;
  private static final int PLANTED = 20;
  private static final List<String> STEPS =
      List.of("right-1", "across-1", "left-1", "left-2", "across-2", "right-2");

  private final RandomStream random =
      new RandomStream(new StreamKey(81, 0, Purpose.RESAMPLING, 0, 0, 0));
  private String kind;

  @Test
  void everyPlantedBreach_isFoundAndNotBeforeItsEvent() {
    TreeMap<String, Integer> planted = new TreeMap<>();
    List<TableRules> rules = MixedTable.rules();
    for (int deal = 0; deal < GAMES; deal++) {
      GameRecord game = Records.play(rules.get(deal % rules.size()), deal, deal);
      for (int number = 0; number < PLANTED; number++) {
        int at = place(game.events());
        GameRecord changed = number % 4 == 3 ? changedOrder(game, at) : changedEvent(game, at);
        if (changed != null) {
          Optional<Breach> found = Replay.check(Records.HANDS, changed);
          assertThat(found).as("%s in deal %d at event %d", kind, deal, at).isPresent();
          assertThat(found.get().event())
              .as("%s in deal %d", kind, deal)
              .isGreaterThanOrEqualTo(at);
          planted.merge(kind, 1, Integer::sum);
        }
      }
    }
    assertThat(planted).hasSize(15);
    assertThat(planted.values()).allSatisfy(count -> assertThat(count).isGreaterThan(10));
  }

  /** Anywhere, but mostly not at one of the many draws and discards. */
  private int place(List<GameEvent> events) {
    int at = random.below(events.size());
    for (int again = 0; again < 5 && plain(events.get(at)); again++) {
      at = random.below(events.size());
    }
    return at;
  }

  private static boolean plain(GameEvent event) {
    return event instanceof GameEvent.Draw || event instanceof GameEvent.Discard;
  }

  /** An event that stands twice, or is missing, or comes after the one that followed it. */
  private GameRecord changedOrder(GameRecord game, int at) {
    GameEvent here = game.events().get(at);
    if (here instanceof GameEvent.Exchange) {
      return null;
    }
    switch (random.below(3)) {
      case 0:
        kind = "repeated";
        return Records.inserted(game, at, here);
      case 1:
        kind = "missing";
        return Records.without(game, at);
      default:
        kind = "late";
        boolean last = at + 1 == game.events().size();
        return last || game.events().get(at + 1) instanceof GameEvent.Exchange
            ? null
            : Records.events(
                game,
                events -> {
                  Collections.swap(events, at, at + 1);
                  return events;
                });
    }
  }

  private GameRecord changedEvent(GameRecord game, int at) {
    GameEvent changed = changed(game.events().get(at));
    return changed == null ? null : Records.with(game, at, changed);
  }

  private GameEvent changed(GameEvent event) {
    if (event instanceof GameEvent.Pass pass) {
      return pass(pass);
    } else if (event instanceof GameEvent.Draw draw) {
      kind = random.below(2) == 0 ? "draw by another" : "draw of another tile";
      return kind.equals("draw by another")
          ? new GameEvent.Draw(other(draw.seat(), 4), draw.tile())
          : new GameEvent.Draw(draw.seat(), other(draw.tile(), Tile.KINDS));
    } else if (event instanceof GameEvent.Discard discard) {
      kind = "discard by another";
      return new GameEvent.Discard(other(discard.seat(), 4), discard.tile());
    } else if (event instanceof GameEvent.Claim claim) {
      return claim(claim);
    } else if (event instanceof GameEvent.Exchange exchange) {
      kind = "exchange by another";
      return new GameEvent.Exchange(
          other(exchange.seat(), 4), exchange.owner(), exchange.exposure(), exchange.tile());
    } else if (event instanceof GameEvent.Dead dead) {
      kind = "another hand dead";
      return new GameEvent.Dead(other(dead.seat(), 4));
    } else if (event instanceof GameEvent.Mahjong mahjong) {
      kind = random.below(2) == 0 ? "mahjong of another" : "mahjong another way";
      return kind.equals("mahjong of another")
          ? new GameEvent.Mahjong(
              other(mahjong.seat(), 4), mahjong.by(), mahjong.from(), mahjong.losers())
          : new GameEvent.Mahjong(
              mahjong.seat(), way(mahjong.by()), mahjong.from(), mahjong.losers());
    }
    return null;
  }

  private String way(String by) {
    List<String> ways = new ArrayList<>(List.of("draw", "exchange", "discard", "deal"));
    ways.remove(by);
    return ways.get(random.below(ways.size()));
  }

  private GameEvent pass(GameEvent.Pass pass) {
    switch (random.below(3)) {
      case 0:
        kind = "another pass";
        int step = other(STEPS.indexOf(pass.step()), STEPS.size());
        return new GameEvent.Pass(
            STEPS.get(step), pass.from(), pass.to(), pass.own(), pass.forwarded());
      case 1:
        kind = "pass to another";
        return new GameEvent.Pass(
            pass.step(), pass.from(), other(pass.to(), 4), pass.own(), pass.forwarded());
      default:
        kind = "pass of one tile more";
        List<Integer> more = new ArrayList<>(pass.own());
        more.add(random.below(Tile.KINDS));
        return new GameEvent.Pass(pass.step(), pass.from(), pass.to(), more, pass.forwarded());
    }
  }

  private GameEvent claim(GameEvent.Claim claim) {
    kind = random.below(2) == 0 ? "claim from another" : "claim of another tile";
    boolean from = kind.equals("claim from another");
    return new GameEvent.Claim(
        claim.seat(),
        from ? other(claim.from(), 4) : claim.from(),
        from ? claim.tile() : other(claim.tile(), Tile.KINDS),
        claim.kind(),
        claim.size(),
        claim.jokers(),
        claim.losers());
  }

  /** A number below a bound other than the one given. */
  private int other(int value, int bound) {
    int shifted = random.below(bound - 1);
    return shifted >= value ? shifted + 1 : shifted;
  }

  /** What only the end says is checked against the game as well. */
  @Test
  void everyChangeOfTheEnd_isFound() {
    for (int deal = 0; deal < 60; deal++) {
      GameRecord game = Records.play(MixedTable.rules().get(deal % 6), deal, 0);
      int last = game.events().size() - 1;
      for (GameRecord.End end : changedEnds(game.end())) {
        GameRecord changed = Records.end(game, old -> end);
        assertThat(Replay.check(Records.HANDS, changed).orElseThrow().event())
            .as("%s in deal %d", end, deal)
            .isEqualTo(last);
      }
    }
  }

  private List<GameRecord.End> changedEnds(GameRecord.End end) {
    List<GameRecord.End> ends = new ArrayList<>();
    ends.add(new GameRecord.End(end.how(), end.win(), end.points(), end.wall() + 1));
    ends.add(new GameRecord.End(end.how(), end.win(), end.points().subList(0, 3), end.wall()));
    for (String how : List.of("mahjong", "wall-game", "void")) {
      if (!how.equals(end.how())) {
        ends.add(new GameRecord.End(how, end.win(), end.points(), end.wall()));
      }
    }
    for (int seat = 0; seat < 4; seat++) {
      List<Integer> points = new ArrayList<>(end.points());
      points.set(seat, points.get(seat) + 5);
      ends.add(new GameRecord.End(end.how(), end.win(), points, end.wall()));
    }
    return ends;
  }
}
