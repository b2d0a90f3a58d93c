package org.tallywall.core.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.Deal;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * Pins the streams and one wall to a file. Whoever changes them changes every result: the stream
 * version goes up, and the changelog says so under "Changes results".
 */
class GoldenStreamsTest {
  private static final List<StreamKey> KEYS =
      List.of(
          new StreamKey(0, 0, Purpose.WALL, 0, 0, 0),
          new StreamKey(20261125L, 0, Purpose.WALL, 0, 0, 0),
          new StreamKey(20261125L, 1, Purpose.WALL, 0, 0, 0),
          new StreamKey(20261125L, 8, Purpose.DICE, 0, 0, 0),
          new StreamKey(20261125L, 8, Purpose.BLIND_PASS, 2, 0, 131),
          new StreamKey(20261125L, 8, Purpose.DECISION, 3, 0, 1611),
          new StreamKey(20261125L, 8, Purpose.ROLLOUT, 1, 1_000_000, 1611),
          new StreamKey(-1, 4_000_000_000L, Purpose.RESAMPLING, 0, 0, 0),
          new StreamKey(Long.MIN_VALUE, 12, Purpose.CARD, 0, 3, 0));

  @Test
  void streamsAndWall_areThoseOfTheFile() throws IOException {
    assertThat(String.join("\n", now())).isEqualTo(golden());
  }

  private static String golden() throws IOException {
    try (InputStream file = GoldenStreamsTest.class.getResourceAsStream("streams-1.txt")) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8).strip();
    }
  }

  /** The file's lines, worked out anew: eight numbers for each key, then a wall and its dice. */
  private static List<String> now() {
    List<String> lines = new ArrayList<>();
    lines.add("stream version " + StreamKey.STREAM_VERSION);
    for (StreamKey key : KEYS) {
      StringBuilder line = new StringBuilder(text(key)).append(':');
      RandomStream stream = new RandomStream(key);
      for (int at = 0; at < 8; at++) {
        line.append(' ').append(Long.toHexString(stream.nextLong()));
      }
      lines.add(line.toString());
    }
    Deal deal = Deal.of(20261125L, 8, TileSet.USUAL);
    StringBuilder wall = new StringBuilder("wall of deal 8:");
    for (int at = 0; at < deal.size(); at++) {
      wall.append(' ').append(Tile.symbol(deal.tile(at)));
    }
    lines.add(wall.toString());
    lines.add("dice of deal 8: " + deal.die(0) + " " + deal.die(1));
    return lines;
  }

  private static String text(StreamKey key) {
    return "%d %d %s %d %d %d"
        .formatted(key.seed(), key.deal(), key.purpose(), key.seat(), key.sample(), key.decision());
  }

  @Test
  void wall_ofADeal_followsFromTheLibrarysNumbersAlone() {
    UniformRandomProvider library =
        RandomSource.PHILOX_4X64.create(new long[] {20261125L, 1, 0, 8, 1, 0});
    int[] wall = TileSet.USUAL.tiles();
    for (int last = wall.length - 1; last > 0; last--) {
      long bound = last + 1;
      long refused = (1L << 32) % bound;
      long product;
      do {
        product = (library.nextLong() >>> 32) * bound;
      } while ((product & 0xFFFFFFFFL) < refused);
      int other = (int) (product >> 32);
      int kept = wall[last];
      wall[last] = wall[other];
      wall[other] = kept;
    }
    Deal deal = Deal.of(20261125L, 8, TileSet.USUAL);
    for (int at = 0; at < wall.length; at++) {
      assertThat(deal.tile(at)).isEqualTo(wall[at]);
    }
  }

  @Test
  void dice_ofADeal_followFromTheLibrarysNumbersAlone() {
    UniformRandomProvider library =
        RandomSource.PHILOX_4X64.create(new long[] {20261125L, 1, 0, 8, 2, 0});
    Deal deal = Deal.of(20261125L, 8, TileSet.USUAL);
    assertThat(deal.die(0)).isEqualTo((int) ((library.nextLong() >>> 32) * 6 >> 32) + 1);
    assertThat(deal.die(1)).isEqualTo((int) ((library.nextLong() >>> 32) * 6 >> 32) + 1);
  }
}
