package org.tallywall.experiments.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.experiments.error.FailedException;

/** A run begins only where there is room for it. */
class FreeDiskTest {
  private static final long MIB = 1L << 20;

  @TempDir Path folder;

  @Test
  void check_tooLittleRoom_saysHowMuchThereIsAndIsNeeded() {
    FreeDisk disk = new FreeDisk(Path.of("results"), () -> 100 * MIB);

    assertThatCode(() -> disk.check(60 * MIB)).doesNotThrowAnyException();
    assertThatThrownBy(() -> disk.check(80 * MIB))
        .isInstanceOf(FailedException.class)
        .hasMessage(
            "the disk of \"results\" has 100 MiB free and the run needs about 113 MiB; make room,"
                + " or name another folder with --out");
  }

  @Test
  void nearlyFull_atTheReserve() {
    assertThat(new FreeDisk(folder, () -> FreeDisk.RESERVE).nearlyFull()).isFalse();
    assertThat(new FreeDisk(folder, () -> FreeDisk.RESERVE - 1).nearlyFull()).isTrue();
  }

  @Test
  void realDisk_ofAFolderYetToCome_tells() {
    assertThat(FreeDisk.of(folder.resolve("not/yet/there")).free()).isPositive();
  }
}
