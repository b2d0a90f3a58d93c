package org.tallywall.core.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Faults come out from top to bottom, one a line, as file:line:column (id): message. */
class FaultsTest {
  @Test
  void faults_notedInAnyOrder_comeOutFromTopToBottom() {
    Faults faults = new Faults();
    faults.fault(new Place(3, 1), "third");
    faults.fault(new Place(2, 9), "L2", "second");
    faults.fault(new Place(2, 1), "first");
    faults.warn(new Place(1, 1), "L1", "odd");
    assertThat(faults.faults())
        .extracting(Fault::message)
        .containsExactly("first", "second", "third");
    assertThat(faults.count()).isEqualTo(3);
    assertThat(faults.warnings()).containsExactly(new Fault(1, 1, "L1", "odd"));
  }

  @Test
  void warnings_alone_areNoFault() {
    Faults faults = new Faults();
    faults.warn(Place.FILE, "", "odd");
    assertThat(faults.any()).isFalse();
  }

  @Test
  void exception_ofAFaultyFile_namesEachFaultOnALine() {
    List<Fault> faults = List.of(new Fault(0, 0, "", "empty"), new Fault(4, 13, "L2", "not 14"));
    assertThat(new FaultyFileException("card.json", faults))
        .hasMessage("card.json: empty\ncard.json:4:13 (L2): not 14");
  }

  /** Whoever makes a million mistakes reads of the first fifty. */
  @Test
  void faults_beyondTheBound_areCountedInTheLast() {
    Faults faults = new Faults();
    int lines = 1_000_003;
    for (long at = 0; at < lines; at++) {
      Place mixed = new Place((int) (at * 7919 % lines) + 1, 1);
      faults.fault(mixed, "wrong");
      faults.warn(mixed, "", "odd");
    }
    List<Fault> told = faults.faults();
    assertThat(told).hasSize(FileLimits.MOST_FAULTS + 1);
    assertThat(told.get(0)).isEqualTo(new Fault(1, 1, "", "wrong"));
    assertThat(told.get(49)).isEqualTo(new Fault(50, 1, "", "wrong"));
    assertThat(told.get(50).text("card.json"))
        .isEqualTo("card.json: and 999953 more faults; only the first 50 are listed");
    assertThat(faults.warnings().get(50).message()).startsWith("and 999953 more warnings");
    assertThat(faults.count()).isEqualTo(lines);
    assertThat(new FaultyFileException("card.json", told).getMessage()).hasLineCount(51);
  }

  @Test
  void exception_ofManyFaultsFromElsewhere_namesTheFirst() {
    List<Fault> many = Collections.nCopies(1000, new Fault(1, 1, "", "wrong"));
    FaultyFileException faulty = new FaultyFileException("a.txt", many);
    assertThat(faulty.getMessage())
        .hasLineCount(51)
        .endsWith("and 950 more faults; only the first 50 are listed");
    assertThat(faulty.faults()).hasSize(51);
  }

  @Test
  void fault_withControlCharacters_isOneVisibleLine() {
    Fault fault = new Fault(1, 2, "\u001b[31m", "a\nb" + "x".repeat(10_000));
    assertThat(fault.text("my\r.json"))
        .startsWith("my\\u{d}.json:1:2 (\\u{1b}[31m): a\\u{a}bxx")
        .hasSizeLessThan(FileLimits.LONGEST_MESSAGE + 100)
        .endsWith("x…");
  }
}
