package org.tallywall.experiments.review;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.strategies.guess.Guess;

/** Positions small enough to be solved exactly, and players that play them in the one way meant. */
public final class TinyTable {
  /** A clock that stands still, so that no test depends on a machine's speed. */
  private static final RunLimits STILL = new RunLimits(1, 60_000, () -> 0);

  private TinyTable() {}

  /** A card of lines that are each worth 25, with no extra pay for hands without jokers. */
  public static TableSetup setup(String... lines) {
    String typed =
        String.join(
            ", ",
            Stream.of(lines)
                .map(line -> "{ \"tiles\": \"" + line + "\", \"value\": 25 }")
                .toList());
    String json =
        "{ \"card\": \"tiny\", \"families\": [ { \"family\": \"A\", \"lines\": [ "
            + typed
            + " ] } ] }";
    Card card = CardFile.json("tiny.json", json).orThrow();
    return new TableSetup(new ConcreteHands(card), TableRules.of(Map.of("score.jokerless", 1)));
  }

  public static PositionSheet sheet(TableSetup setup, String... lines) {
    return PositionSheet.of("tiny.txt", String.join("\n", lines), setup);
  }

  public static Considered discard(String tile) {
    return new Considered(List.of(new Move.Discard(TileText.tile(tile))), List.of());
  }

  public static List<Seated> four(String name, java.util.function.Supplier<Player> maker) {
    return java.util.Collections.nCopies(4, new Seated(name, name, maker));
  }

  /** A review of so many games, on one thread. */
  static Review review(ReviewQuestion question, long games) {
    return review(question, games, 1);
  }

  static Review review(ReviewQuestion question, long games, int threads) {
    RunLimits run = new RunLimits(threads, STILL.decisionMillis(), STILL.clock());
    return new Reviewer(question, new ReviewLimits(games, ReviewLimits.ANY_TIME, run))
        .review(known -> {});
  }

  /** Throws the tile that it drew unless that completes its hand; claims at most to win. */
  public static final class ThrowsWhatItDraws implements Player {
    private final boolean claims;

    public ThrowsWhatItDraws(boolean claims) {
      this.claims = claims;
    }

    @Override
    public boolean declares(SeatView view, RandomStream random) {
      return true;
    }

    @Override
    public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
      throw new IllegalStateException("nothing is passed here");
    }

    @Override
    public boolean stops(SeatView view, RandomStream random) {
      throw new IllegalStateException("nothing is passed here");
    }

    @Override
    public int courtesyNumber(SeatView view, RandomStream random) {
      throw new IllegalStateException("nothing is passed here");
    }

    @Override
    public int[] courtesyTiles(SeatView view, int tiles, RandomStream random) {
      throw new IllegalStateException("nothing is passed here");
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      return claims && view.complete() ? ClaimChoice.mahjong() : ClaimChoice.nothing();
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      return view.complete() ? TurnChoice.mahjong() : TurnChoice.discard(view.drawn());
    }
  }

  /** Deals what is unseen at random: first to the racks of the others, then to the wall. */
  public static final class AtRandom implements Guess {
    private final String[] fixed;

    /** Some racks may be known; null where one is not. */
    public AtRandom(String... fixed) {
      this.fixed = fixed;
    }

    @Override
    public boolean guessesWall() {
      return true;
    }

    @Override
    public void deal(SeatView view, RandomStream random, Position into) {
      int[] left = new int[Tile.KINDS];
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        left[kind] = view.unseen(kind);
      }
      for (int seat = 0; seat < fixed.length; seat++) {
        if (fixed[seat] != null) {
          Rack rack = TileText.rack(fixed[seat]);
          into.rack(seat).set(rack);
          for (int kind = 0; kind < Tile.KINDS; kind++) {
            left[kind] -= rack.held(kind);
          }
        }
      }
      int[] tiles = new int[view.table().rules().tiles().size()];
      int count = 0;
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        for (int copy = 0; copy < left[kind]; copy++) {
          tiles[count++] = kind;
        }
      }
      random.shuffle(tiles, count);
      for (int seat = 0; seat < 4; seat++) {
        boolean known = seat < fixed.length && fixed[seat] != null;
        if (seat != view.seat() && !known) {
          into.rack(seat).clear();
          int exposed = view.exposures(seat).stream().mapToInt(one -> one.size()).sum();
          while (into.rack(seat).total() < 13 - exposed) {
            into.rack(seat).add(tiles[--count]);
          }
        }
      }
      for (int at = 0; at < view.wallLeft(); at++) {
        into.wall(at, tiles[--count]);
      }
    }
  }
}
