package org.tallywall.experiments.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.store.Checkpoint.State;

/** A block's file is taken for what it is, or refused; nothing in between. */
class CheckpointTest {
  private static final Block BLOCK = new Block(3, 1500, 500);
  private static final byte[] RUN = new byte[32];
  private static final byte[] CONTENT =
      "some counts, some records, again and again and again".getBytes(StandardCharsets.UTF_8);
  private static final byte[] FILE = Checkpoint.file(RUN, BLOCK, CONTENT);

  private static State state(byte[] file) {
    return Checkpoint.read(RUN, BLOCK, file).state();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 100, 100_000})
  void file_ofAnyLength_isReadBack(int length) {
    byte[] content = new byte[length];
    for (int at = 0; at < length; at++) {
      content[at] = (byte) (at * 31 >> 3);
    }
    Checkpoint.Reading reading = Checkpoint.read(RUN, BLOCK, Checkpoint.file(RUN, BLOCK, content));

    assertThat(reading.good()).isTrue();
    assertThat(reading.content()).isEqualTo(content);
  }

  @Test
  void everyTruncation_isDamage() {
    for (int length = 0; length < FILE.length; length++) {
      assertThat(state(Arrays.copyOf(FILE, length))).isEqualTo(State.DAMAGED);
    }
    assertThat(state(Arrays.copyOf(FILE, FILE.length + 1))).isEqualTo(State.DAMAGED);
  }

  @Test
  void everyFlippedBit_isDamage() {
    for (int bit = 0; bit < 8 * FILE.length; bit++) {
      byte[] file = FILE.clone();
      file[bit / 8] ^= (byte) (1 << bit % 8);
      assertThat(state(file)).as("bit " + bit).isEqualTo(State.DAMAGED);
    }
  }

  @Test
  void anotherRunOrBlock_isForeign() {
    byte[] other = new byte[32];
    other[31] = 1;
    assertThat(state(Checkpoint.file(other, BLOCK, CONTENT))).isEqualTo(State.FOREIGN);
    assertThat(state(Checkpoint.file(RUN, new Block(4, 1500, 500), CONTENT)))
        .isEqualTo(State.FOREIGN);
    assertThat(state(Checkpoint.file(RUN, new Block(3, 1501, 500), CONTENT)))
        .isEqualTo(State.FOREIGN);
    assertThat(state(Checkpoint.file(RUN, new Block(3, 1500, 499), CONTENT)))
        .isEqualTo(State.FOREIGN);
  }

  @Test
  void anotherFile_isDamage() {
    assertThat(state("a letter to my aunt".repeat(20).getBytes(StandardCharsets.UTF_8)))
        .isEqualTo(State.DAMAGED);
  }
}
