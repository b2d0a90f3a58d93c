package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.text.Fault;

/** Ids made for lines that have none. */
class LineIdsTest {
  private static final String[] WINDS = {"NNNN", "EEEE", "WWWW", "SSSS", "RRRR", "GGGG"};

  /** Each line is written as family or family:id; ids must come out in that order. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Ladders Ladders Tens     | L1 L2 T1",
        "Towers Tens Towers       | T1 T2 Te1",
        "Tens Tens2 Ten           | T1 Te1 Ten1",
        "Te T Te? T!              | T1 Ta1 Te1 Tb1",
        "ladders                  | L1",
        "--- ???                  | X1 Xa1",
        "Ladders:L2 Ladders       | L2 L2a",
        "Ladders Ladders:L1       | L1a L1",
        "Ladders:x Ladders:y      | x y",
        "Über                     | Ü1",
        "𝐋adders 𝐋ine             | 𝐋1 𝐋i1",
        "𐐨x 𐐨y                    | 𐐀1 𐐀y1",
      })
  void ids_leftOut_areMadeFromTheFamilyAndUnique(String lines, String ids) {
    StringBuilder text = new StringBuilder("family,id,tiles,value\n");
    int at = 0;
    for (String line : lines.split(" ")) {
      String[] parts = line.split(":");
      String id = parts.length > 1 ? parts[1] : "";
      text.append(parts[0]).append(',').append(id).append(",FF 1111b 2222c ");
      text.append(WINDS[at++]).append(",25\n");
    }
    Card card = CardFile.csv("c.csv", "Quay", text.toString()).orThrow();
    assertThat(card.lines()).extracting(Line::id).containsExactly(ids.split(" "));
  }

  /** Names without a letter go on behind z; no id holds anything but letters and digits. */
  @Test
  void ids_ofAThousandFamiliesWithoutLetters_goOnBehindTheAlphabet() {
    StringBuilder text = new StringBuilder("family,tiles,value\n");
    for (int family = 1; family <= 1000; family++) {
      text.append("-".repeat(family % 250 + 1)).append("!?:;.".charAt(family / 250));
      text.append(",FF 1111b 2222c NNNN,25\n");
    }
    Card card = CardFile.csv("c.csv", "Quay", text.toString()).orThrow();
    List<String> ids = card.lines().stream().map(Line::id).toList();
    assertThat(ids).doesNotHaveDuplicates().allMatch(id -> id.matches("X[a-z]*1"));
    assertThat(ids.subList(0, 4)).containsExactly("X1", "Xa1", "Xb1", "Xc1");
    assertThat(ids.subList(25, 30)).containsExactly("Xy1", "Xz1", "Xaa1", "Xab1", "Xac1");
    assertThat(ids.get(999)).isEqualTo("Xalk1");
  }

  @Test
  void ids_thatAreTakenOftenerThanThereAreLetters_goOnBehindThem() {
    StringBuilder text = new StringBuilder("family,id,tiles,value\n");
    text.append("A,,FF 1111b 2222c NNNN,25\nA,A1,FF 1111b 2222c NNNN,25\n");
    for (char letter = 'a'; letter <= 'z'; letter++) {
      text.append("A,A1").append(letter).append(",FF 1111b 2222c NNNN,25\n");
    }
    Card card = CardFile.csv("c.csv", "Quay", text.toString()).orThrow();
    assertThat(card.lines().get(0).id()).isEqualTo("A1aa");
  }

  @Test
  void id_withHalfACharacter_isRefused() {
    String card =
        "{\"card\": \"c\", \"families\": [{\"family\": \"A\", \"lines\": [{\"id\": \"\\ud800\","
            + " \"tiles\": \"FF 1111b 2222c NNNN\", \"value\": 25}]}]}";
    assertThat(CardFile.json("c.json", card).faults())
        .extracting(Fault::message)
        .containsExactly("\"\\u{d800}\" holds half a character; take it out or write it whole");
  }
}
