package org.tallywall.experiments.benchmarks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.tile.TileSet;
import org.tallywall.experiments.invent.CardInventor;

/** What happens before a game: a card read and expanded, a wall shuffled. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class CardBenchmark {
  private static final int LINES = 54;

  private String text;
  private long number;
  private final Random random = new Random(1);
  private final List<Integer> tiles = new ArrayList<>();

  /** For the harness. */
  public CardBenchmark() {}

  /** Draws the card and sets out the tiles. */
  @Setup
  public void draw() {
    text = new CardInventor(1, LINES).draw("drawn").text();
    for (int tile : TileSet.USUAL.tiles()) {
      tiles.add(tile);
    }
  }

  /**
   * A card file of 54 lines read, checked, expanded and made ready for scans.
   *
   * @return the card's hands
   */
  @Benchmark
  public ConcreteHands readAndExpand() {
    return new ConcreteHands(CardFile.json("drawn", text).orThrow());
  }

  /**
   * A deal by its number: the wall shuffled from a keyed stream, the dice rolled.
   *
   * @return the deal
   */
  @Benchmark
  public Deal deal() {
    return Deal.of(1, number++, TileSet.USUAL);
  }

  /**
   * The baseline of the deal: a list shuffled by the library, without keys.
   *
   * @return the list
   */
  @Benchmark
  public List<Integer> shuffledList() {
    Collections.shuffle(tiles, random);
    return tiles;
  }
}
