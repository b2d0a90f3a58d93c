package org.tallywall.experiments.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.text.Sha256;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.run.SpoiledDeal;
import org.tallywall.experiments.tally.NumberReader;
import org.tallywall.experiments.tally.NumberWriter;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyLayout;

/**
 * Turns results of blocks into bytes and back; the same result always gives the same bytes. In
 * front stands a digest of what the tally carries and in which order, so that a tally that has been
 * changed since is never filled with numbers that mean something else. Safe for use by several
 * threads.
 */
public final class BlockCodec {
  private final Supplier<StudyTally> empty;
  private final String layout;

  /**
   * Takes results of one study.
   *
   * @param empty makes a tally of the study in which nothing is counted yet
   */
  public BlockCodec(Supplier<StudyTally> empty) {
    this.empty = empty;
    this.layout = Sha256.of(TallyLayout.of(empty.get()).getBytes(StandardCharsets.UTF_8));
  }

  /**
   * A tally of the study in which nothing is counted yet.
   *
   * @return a fresh one
   */
  public StudyTally empty() {
    return empty.get();
  }

  /**
   * Whether bytes were written by a tally like the one that is read into.
   *
   * @param bytes the bytes of a result
   * @return false where they hold other numbers, or none
   */
  public boolean fits(byte[] bytes) {
    try {
      return new NumberReader(bytes).text().equals(layout);
    } catch (UncheckedIOException broken) {
      return false;
    }
  }

  /**
   * Writes a result.
   *
   * @param result what came out of a block
   * @return its bytes
   */
  public byte[] bytes(BlockResult result) {
    NumberWriter out = new NumberWriter();
    out.text(layout);
    result.tally().carry(out);
    out.carry(result.records().size());
    result.records().forEach(out::text);
    out.carry(result.faults().size());
    for (SpoiledDeal fault : result.faults()) {
      out.carry(fault.deal());
      out.text(fault.arm());
      out.carry(fault.studied());
      out.carry(fault.seat());
      out.carry(fault.illegal() ? 1 : 0);
      out.text(fault.what());
    }
    return out.bytes();
  }

  /**
   * Reads a result.
   *
   * @param block the block
   * @param bytes the bytes written for it
   * @return what came out of the block
   * @throws UncheckedIOException if these are not the bytes of such a result, or do not {@link
   *     #fits fit}
   */
  public BlockResult result(Block block, byte[] bytes) {
    NumberReader in = new NumberReader(bytes);
    if (!in.text().equals(layout)) {
      throw new UncheckedIOException(new IOException("these numbers belong to another tally"));
    }
    StudyTally tally = empty();
    tally.carry(in);
    List<String> records = new ArrayList<>();
    for (int left = in.count(); left > 0; left--) {
      records.add(in.text());
    }
    List<SpoiledDeal> faults = new ArrayList<>();
    for (int left = in.count(); left > 0; left--) {
      faults.add(fault(in));
    }
    in.end();
    return new BlockResult(block, tally, records, faults);
  }

  private static SpoiledDeal fault(NumberReader in) {
    long deal = in.carry(0);
    String arm = in.text();
    int studied = (int) in.carry(0);
    int seat = (int) in.carry(0);
    boolean illegal = in.carry(0) == 1;
    return new SpoiledDeal(deal, arm, studied, seat, illegal, in.text());
  }
}
