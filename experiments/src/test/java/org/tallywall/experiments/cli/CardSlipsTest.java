package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.CardSentence;
import org.tallywall.core.card.Line;

/**
 * Forty slips of the pen that leave a legal card: each changes what the proof sheet says of exactly
 * the line in which it was made, and comparing the two typings finds that line and no other.
 */
class CardSlipsTest {
  private static final List<String> TYPED =
      List.of(
          "'A1', 'tiles': '1111x 22y 333x 444z 55y', 'slide': 'any', 'value': 25",
          "'A2', 'tiles': 'FF 333x 4444x 555y 66y', 'value': 25",
          "'A3', 'tiles': '777x 77x 888y 8888y RR', 'value': 30",
          "'A4', 'tiles': '2x 2x 2x 444y 6666z NNNN', 'value': 35",
          "'A5', 'tiles': ['FF 11x 333y 4444z 555y', 'FF 11x 333y 4444z 999y'], 'value': 30",
          "'A6', 'tiles': 'NNNN EEE (WWWW|SSSS) RRR', 'value': 30",
          "'A7', 'tiles': '33x 444x 5555x 666y FF', 'slide': 'any', 'value': 30, 'concealed': true",
          "'A8', 'tiles': 'FFFF nnnx mmmy 10z 10z', 'where': 'nm: 19 28 37', 'value': 35",
          "'A9', 'tiles': '22x 44y 666x 888y GGGG', 'jokers': false, 'value': 40",
          "'A10', 'tiles': '5555x 66y 777y 888x 99y', 'suits': 'or one', 'value': 30",
          "'A11', 'tiles': '111x 33x 5555y 777y 88y', 'slide': 'none', 'value': 25",
          "'A12', 'tiles': '1111x 333x 5555y 777y', 'slide': 'by-two', 'value': 25",
          "'A13', 'tiles': 'uuuu vvv 66x DDx 888y', 'value': 35",
          "'A14', 'tiles': '2048x 222y 888z FFFF', 'value': 30",
          "'A15', 'tiles': '11x 33x 55x 77x 99x NN SS', 'value': 50, 'concealed': true",
          "'A16', 'tiles': 'NEWS 44b 555c 66666d', 'value': 45, 'jokerless': false");

  @TempDir Path folder;

  private static String card(String changedId, String good, String bad) {
    StringBuilder text =
        new StringBuilder("{ 'card': 'Proof card', 'families': [ { 'family': 'All',");
    text.append(" 'lines': [\n");
    for (String typed : TYPED) {
      String line = typed;
      if (typed.startsWith("'" + changedId + "'")) {
        line = typed.replace(good, bad);
        assertThat(line).as("the slip is made").isNotEqualTo(typed);
      }
      text.append("{ 'id': ").append(line).append(" },\n");
    }
    return text.append("] } ] }").toString().replace('\'', '"');
  }

  /** What the proof sheet says: for each line its sentence and its number of ways. */
  private static Map<String, String> proof(String text) {
    Card card = CardFile.json("card.json", text).orThrow();
    Map<String, String> sheet = new LinkedHashMap<>();
    for (Line line : card.lines()) {
      sheet.put(line.id(), CardSentence.of(line) + "; " + line.hands().size() + " ways");
    }
    return sheet;
  }

  @ParameterizedTest(name = "{0}: {1} → {2}")
  @CsvSource(
      delimiter = '!',
      quoteCharacter = '~',
      value = {
        "A1 ! 22y ! 22x",
        "A1 ! 333x ! 333z",
        "A1 ! 444z ! 444x",
        "A1 ! 55y ! 55z",
        "A1 ! 55y ! 66y",
        "A1 ! 333x ! 444x",
        "A1 ! 22y 333x 444z ! 222y 333x 44z",
        "A1 ! , 'slide': 'any' ! ~~",
        "A1 ! 'any' ! 'by-two'",
        "A1 ! 25 ! 35",
        "A2 ! 555y ! 555x",
        "A2 ! 66y ! 66z",
        "A2 ! FF 333x ! FFF 33x",
        "A2 ! 4444x ! 4444b",
        "A2 ! 25 ! 25, 'slide': 'any'",
        "A3 ! 777x 77x ! 77777x",
        "A3 ! 777x 77x ! 777x 77y",
        "A3 ! RR ! GG",
        "A4 ! 2x 2x 2x ! 222x",
        "A4 ! 2x 2x 2x ! 2x 22y",
        "A4 ! NNNN ! EEEE",
        "A5 ! , 'FF 11x 333y 4444z 999y'] ! ]",
        "A5 ! 999y ! 888y",
        "A6 ! (WWWW|SSSS) ! WWWW",
        "A6 ! EEE (WWWW|SSSS) ! EEEE (WWW|SSS)",
        "A7 ! , 'concealed': true ! ~~",
        "A7 ! 666y ! 666x",
        "A8 ! 28 37 ! 28",
        "A8 ! 37 ! 36",
        "A8 ! 10z 10z ! 10y 10z",
        "A9 ! 'jokers': false, ! ~~",
        "A9 ! 40 ! 40, 'concealed': true",
        "A10 ! 'suits': 'or one', ! ~~",
        "A11 ! 'none' ! 'any'",
        "A12 ! 'by-two' ! 'any'",
        "A13 ! vvv ! uuu",
        "A13 ! DDx ! DDy",
        "A14 ! 2048x ! 2068x",
        "A15 ! NN SS ! NN EE",
        "A16 ! , 'jokerless': false ! ~~"
      })
  void slip_leavesALegalCard_itsLineAloneIsFound(String id, String good, String bad) {
    String right = card("", "", "");
    String wrong = card(id, good, bad);
    Map<String, String> rightSheet = proof(right);
    Map<String, String> wrongSheet = proof(wrong);

    Typed compared =
        Typed.run(
            "card",
            "compare",
            Cards.write(folder, "right.json", right),
            Cards.write(folder, "wrong.json", wrong));

    assertThat(wrongSheet.keySet()).isEqualTo(rightSheet.keySet());
    rightSheet.forEach(
        (line, sentence) -> {
          if (line.equals(id)) {
            assertThat(wrongSheet.get(line)).isNotEqualTo(sentence);
          } else {
            assertThat(wrongSheet.get(line)).isEqualTo(sentence);
          }
        });
    assertThat(compared.code()).isEqualTo(1);
    assertThat(compared.out()).startsWith(id + "\n").endsWith("\n1 line differs\n");
    assertThat(compared.out().lines().filter(line -> !line.startsWith(" "))).hasSize(2);
  }
}
