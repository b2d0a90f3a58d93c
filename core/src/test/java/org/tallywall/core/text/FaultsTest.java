package org.tallywall.core.text;

import static org.assertj.core.api.Assertions.assertThat;

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
}
