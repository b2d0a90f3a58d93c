package org.tallywall.experiments.store;

import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.run.SpoiltDeal;
import org.tallywall.experiments.tally.NumberReader;
import org.tallywall.experiments.tally.NumberWriter;
import org.tallywall.experiments.tally.StudyTally;

/**
 * Turns results of blocks into bytes and back; the same result always gives the same bytes. Safe
 * for use by several threads.
 *
 * @param empty makes a tally of the study in which nothing is counted yet
 */
public record BlockCodec(Supplier<StudyTally> empty) {
  /**
   * Writes a result.
   *
   * @param result what came out of a block
   * @return its bytes
   */
  public byte[] bytes(BlockResult result) {
    NumberWriter out = new NumberWriter();
    result.tally().carry(out);
    out.carry(result.records().size());
    result.records().forEach(out::text);
    out.carry(result.faults().size());
    for (SpoiltDeal fault : result.faults()) {
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
   * @throws UncheckedIOException if these are not the bytes of such a result
   */
  public BlockResult result(Block block, byte[] bytes) {
    NumberReader in = new NumberReader(bytes);
    StudyTally tally = empty.get();
    tally.carry(in);
    List<String> records = new ArrayList<>();
    for (int left = in.count(); left > 0; left--) {
      records.add(in.text());
    }
    List<SpoiltDeal> faults = new ArrayList<>();
    for (int left = in.count(); left > 0; left--) {
      faults.add(fault(in));
    }
    in.end();
    return new BlockResult(block, tally, records, faults);
  }

  private static SpoiltDeal fault(NumberReader in) {
    long deal = in.carry(0);
    String arm = in.text();
    int studied = (int) in.carry(0);
    int seat = (int) in.carry(0);
    boolean illegal = in.carry(0) == 1;
    return new SpoiltDeal(deal, arm, studied, seat, illegal, in.text());
  }
}
