package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that lists the lines nearest to a rack. */
class RackCommandTest {
  @TempDir Path folder;

  @Test
  void rack_oneAway_isListedFirstWithWhatItWants() {
    Typed typed = Typed.run("rack", Cards.small(folder), "2222b 33c 444b 555d 6c");

    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .startsWith(
            """
            2222b 33c 444b 555d 6c

              L1  13 of 14 held, 1 away; 1 way that near; worth 30  "the pier"
                    2222b 444b 555d 33c 66c
                    needs 6c (no jokers)
            """);
  }

  @Test
  void rack_withJokers_namesWhereJokersServe() {
    assertThat(Typed.run("rack", Cards.small(folder), "222b 33c 444b 55d 66c J").out())
        .contains("L1  13 of 14 held, 1 away", "needs 2b 5d (or jokers), one of them by joker");
    assertThat(Typed.run("rack", Cards.small(folder), "2222b 33c 444b 55d 66c J").out())
        .contains("L1  14 of 14 held, complete");
  }

  @Test
  void csv_oneRack_hasEveryLineInTheOrderOfTheCard() {
    Typed typed =
        Typed.run("rack", Cards.small(folder), "444b 555d 33c 6c", "--exposed", "222bJ", "--csv");

    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .isEqualTo(
            """
            rack,line,away,ways,example,wants,by-joker
            444b 555d 33c 6c / 222bJ,L1,1,1,2222b 444b 555d 33c 66c,6c,0
            444b 555d 33c 6c / 222bJ,L2,,,,,
            444b 555d 33c 6c / 222bJ,V1,,,,,
            444b 555d 33c 6c / 222bJ,V2,,,,,
            444b 555d 33c 6c / 222bJ,C1,,,,,
            """);
  }

  @Test
  void from_fileOfRacks_keepsRowsAsGivenAndTheirOrder() {
    String racks =
        Cards.write(folder, "racks.txt", "1133b  5577b 99b NNS\r\n\n444b 555d 33c 6c/222bJ\n");

    Typed typed = Typed.run("rack", Cards.small(folder), "--from", racks, "--csv");

    assertThat(typed.code()).isZero();
    assertThat(typed.out().lines()).hasSize(11);
    assertThat(typed.out())
        .contains("1133b  5577b 99b NNS,C1,1,1,11b 33b 55b 77b 99b NN SS,S,0\n")
        .contains("444b 555d 33c 6c/222bJ,L1,1,1,2222b 444b 555d 33c 66c,6c,0\n");
  }

  @Test
  void from_faultyRows_allAreNamedAndNothingIsPrinted() {
    String racks =
        Cards.write(folder, "racks.txt", "1133b 5577b 99b NNS\n1133b\nxx\n11111b 5577b 99b NN\n");

    Typed typed = Typed.run("rack", Cards.small(folder), "--from", racks, "--csv");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).contains("racks.txt:2:1", "racks.txt:3:1", "racks.txt:4:1");
  }

  @Test
  void rack_wrongTilesAndNumbers_areExplained() {
    assertComplaint("2x", "\"2x\"");
    assertComplaint("2222b 33c 444b", "write 13 or 14");
    assertComplaint("22222b 33c 444b 555d", "there are only 4 of 2b");
    assertComplaint("FFFFFFFFF 33c 44b", "there are only 8 of F");
  }

  private void assertComplaint(String rack, String words) {
    Typed typed = Typed.run("rack", Cards.small(folder), rack);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("tallywall: the rack: ").contains(words);
  }

  @Test
  void rack_withItsExposuresTyped_saysHowManyAreWhere() {
    assertThat(
            Typed.run("rack", Cards.small(folder), "444b 555d 33c 66c", "--exposed", "222bJ")
                .code())
        .isZero();
    assertThat(
            Typed.run("rack", Cards.small(folder), "444b 555d 33c 66c R", "--exposed", "222bJ")
                .err())
        .isEqualTo(
            "tallywall: the rack: 11 on the rack + 4 exposed = 15; write 13 or 14 together\n");
  }

  @Test
  void rack_withoutQuotes_isToldToTakeThem() {
    assertThat(Typed.run("rack", Cards.small(folder), "2222b", "33c").err())
        .startsWith("tallywall: unexpected \"33c\"; put the whole rack in quotes");
  }

  @Test
  void rack_withJokersInAPairsHand_namesNaturalsAndJokersApart() {
    assertThat(Typed.run("rack", Cards.small(folder), "222b 33c 44b 555d 6c J E").out())
        .contains("needs 6c (no jokers) and 24b (or jokers), one of them by joker");
    assertThat(Typed.run("rack", Cards.small(folder), "222b 33c 444b 555d 6c J").out())
        .contains("needs 6c (no jokers)\n");
  }

  @Test
  void rack_missingOrTwice_isExplained() {
    assertThat(Typed.run("rack", Cards.small(folder)).err()).contains("between quotes");
    assertThat(Typed.run("rack", Cards.small(folder), "FF", "--from", "x").err())
        .contains("not both");
  }

  @Test
  void rack_exposuresThatFitNoLine_saysSo() {
    Typed typed = Typed.run("rack", Cards.small(folder), "1133b 5577b 99b", "--exposed", "GGG");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("No line of the card fits these exposures.");
  }
}
