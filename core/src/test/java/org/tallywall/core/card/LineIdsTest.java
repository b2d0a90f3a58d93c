package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
}
