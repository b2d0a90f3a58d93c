package org.tallywall.experiments.benchmarks;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.hand.TileBits;
import org.tallywall.core.tile.Rack;

/**
 * Writes the rows of the benchmark card and its racks to a file, so that the C program scans the
 * very same bits: two counts, then six words a hand, then three words and the jokers of each rack,
 * all 64-bit and little-endian.
 */
public final class RowExport {
  private static final int HANDS = 1500;
  private static final int WORDS = 6;
  private static final int RACK_WORDS = 4;

  private RowExport() {}

  /**
   * Writes the file.
   *
   * @param arguments the file to write
   * @throws IOException if it cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    ConcreteHands card = BenchmarkCards.of(HANDS);
    Reach reach = card.closed();
    Rack[] racks = Racks.dealt();
    ByteBuffer bytes =
        ByteBuffer.allocate(Long.BYTES * (2 + WORDS * reach.size() + RACK_WORDS * racks.length))
            .order(ByteOrder.LITTLE_ENDIAN);
    bytes.putLong(reach.size()).putLong(racks.length);
    for (int at = 0; at < reach.size(); at++) {
      for (long word : reach.row(at)) {
        bytes.putLong(word);
      }
    }
    for (Rack rack : racks) {
      for (long word : TileBits.words(rack)) {
        bytes.putLong(word);
      }
      bytes.putLong(rack.jokers());
    }
    Files.write(Path.of(arguments[0]), bytes.array());
  }
}
