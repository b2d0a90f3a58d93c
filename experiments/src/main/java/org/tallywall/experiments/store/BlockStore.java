package org.tallywall.experiments.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.function.BiConsumer;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.BlockKeeper;
import org.tallywall.experiments.run.BlockResult;

/**
 * The results of blocks, a file each. A block is there whole or not at all. Several threads may
 * look for blocks; one keeps them.
 */
public final class BlockStore implements BlockKeeper {
  static final String ENDING = ".block";
  private static final int DIGITS = 7;

  private final Path folder;
  private final byte[] run;
  private final BlockCodec codec;
  private final BiConsumer<Block, Checkpoint.State> spoiled;
  private final BitSet found;

  /**
   * The store of a run.
   *
   * @param folder the folder with the blocks; where there is none, nothing is stored
   * @param run the digest of the run, 32 bytes
   * @param codec turns results into bytes and back
   * @param spoiled hears of each block that is there and cannot be used, from any thread
   * @throws FailedException if the folder cannot be looked into
   */
  public BlockStore(
      Path folder, byte[] run, BlockCodec codec, BiConsumer<Block, Checkpoint.State> spoiled) {
    this.folder = folder;
    this.run = run.clone();
    this.codec = codec;
    this.spoiled = spoiled;
    this.found = list(folder);
  }

  private static BitSet list(Path folder) {
    BitSet found = new BitSet();
    if (!Files.isDirectory(folder)) {
      return found;
    }
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        int number = number(file.getFileName().toString());
        if (number >= 0) {
          found.set(number);
        }
      }
      return found;
    } catch (IOException e) {
      throw new FailedException("\"" + folder + "\" cannot be looked into", e);
    }
  }

  /** The block's number, or -1 where the file is none. */
  private static int number(String name) {
    if (name.length() != DIGITS + ENDING.length() || !name.endsWith(ENDING)) {
      return -1;
    }
    String digits = name.substring(0, DIGITS);
    return digits.chars().allMatch(digit -> digit >= '0' && digit <= '9')
        ? Integer.parseInt(digits)
        : -1;
  }

  /**
   * The blocks that had files when the store was opened.
   *
   * @return their numbers
   */
  public BitSet found() {
    return (BitSet) found.clone();
  }

  /**
   * The blocks that have files now.
   *
   * @param folder the folder with the blocks
   * @return their numbers
   * @throws FailedException if the folder cannot be looked into
   */
  public static BitSet stored(Path folder) {
    return list(folder);
  }

  /**
   * The file of a block.
   *
   * @param number the block's number
   * @return its path, whether it exists or not
   */
  public Path file(long number) {
    String digits = Long.toString(number);
    return folder.resolve("0".repeat(Math.max(0, DIGITS - digits.length())) + digits + ENDING);
  }

  @Override
  public BlockResult kept(Block block) {
    if (!found.get((int) block.number())) {
      return null;
    }
    Checkpoint.Reading reading = read(block);
    Checkpoint.State state = reading.state();
    if (reading.good()) {
      try {
        return codec.result(block, reading.content());
      } catch (UncheckedIOException broken) {
        state = Checkpoint.State.DAMAGED;
      }
    }
    if (state != Checkpoint.State.MISSING) {
      spoiled.accept(block, state);
    }
    return null;
  }

  /**
   * Reads a block's file.
   *
   * @param block the block
   * @return its content, or what is wrong with it
   * @throws FailedException if the file is there and cannot be read
   */
  public Checkpoint.Reading read(Block block) {
    Path file = file(block.number());
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      return Checkpoint.Reading.of(Checkpoint.State.DAMAGED);
    }
    try {
      Checkpoint.Reading reading = Checkpoint.read(run, block, Files.readAllBytes(file));
      return reading.good() && !codec.fits(reading.content())
          ? Checkpoint.Reading.of(Checkpoint.State.OUTDATED)
          : reading;
    } catch (NoSuchFileException missing) {
      return Checkpoint.Reading.of(Checkpoint.State.MISSING);
    } catch (IOException e) {
      throw new FailedException("\"" + file + "\" cannot be read: " + WholeFile.why(e), e);
    }
  }

  @Override
  public void keep(BlockResult result) {
    byte[] file = Checkpoint.file(run, result.block(), codec.bytes(result));
    WholeFile.write(file(result.block().number()), file);
  }

  /**
   * Takes the blocks away that a run turned out not to need.
   *
   * @param first the number of the first one that is not needed
   * @throws FailedException if one cannot be taken away
   */
  public void dropFrom(long first) {
    BitSet there = list(folder);
    for (int at = there.nextSetBit((int) first); at >= 0; at = there.nextSetBit(at + 1)) {
      try {
        Files.deleteIfExists(file(at));
      } catch (IOException e) {
        throw new FailedException("\"" + file(at) + "\" cannot be deleted", e);
      }
    }
  }
}
