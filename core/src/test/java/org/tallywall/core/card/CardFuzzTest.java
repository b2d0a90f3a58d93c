package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.text.Fault;

/** However a card file is spoiled, reading it gives a card or faults in plain words. */
@Tag("long")
class CardFuzzTest {
  private static final int MUTATIONS = 5_000;
  private static final String PIECES =
      "0123456789bcdxyznmkuvDNEWSRGFJ()|[]{},:;\"'\\/* \n\t\r#@é\uD83C\uDC00\u0000\uFEFF-+.e";
  private static final String JSON =
      """
      { "card": "Quay", "edition": "", "families": [
        { "family": "Ladders", "lines": [
          { "tiles": "1111x 22y 333x 444z 55y", "slide": "any", "value": 25 },
          { "id": "L2", "tiles": ["FF 1111x 22y 3333z 99x", "F DDDx 44y 7777z (NNNN|SSSS)"],
            "value": 30, "concealed": true, "jokers": true, "jokerless": false } ] },
        { "family": "Tens", "lines": [ // sums
          { "tiles": "FFFF nnnx mmmy 10z 10z", "where": "nm: 19 28 37", "value": 35 },
          { "tiles": "uuuu 22x 44x 666y vvv", "suits": "or one", "value": 35, "say": "the" } ] } ] }
      """;
  private static final String CSV =
      """
      family,id,tiles,slide,where,suits,value,concealed,jokers,jokerless,say
      Ladders,,1111x 22y 333x 444z 55y,any,,,25,,,,the staircase
      Ladders,L2,FF 1111x 22y 3333z 99x|F DDDx 44y 7777z (NNNN|SSSS),,,,30,C,TRUE,no,"a ""b\"""
      Tens,T1,FFFF nnnx mmmy 10z 10z,,"nm: 19,28",or one,35,X,yes,,
      """;

  private final RandomStream random =
      new RandomStream(new StreamKey(5_000, 0, Purpose.RESAMPLING, 0, 0, 0));

  @Test
  void json_spoiledAtRandom_givesACardOrFaults() {
    int good = 0;
    for (int at = 0; at < MUTATIONS; at++) {
      String text = spoiled(JSON);
      good += judge(text, CardFile.json("c.json", text));
    }
    assertThat(good).isBetween(MUTATIONS / 50, MUTATIONS / 2);
  }

  @Test
  void csv_spoiledAtRandom_givesACardOrFaults() {
    int good = 0;
    for (int at = 0; at < MUTATIONS; at++) {
      String text = spoiled(CSV);
      good += judge(text, CardFile.csv("c.csv", "Quay", text));
    }
    assertThat(good).isBetween(MUTATIONS / 50, MUTATIONS / 2);
  }

  private static int judge(String text, CardReading reading) {
    int rows = text.split("\r\n|\r|\n", -1).length;
    for (Fault fault : reading.faults()) {
      assertThat(fault.message())
          .as(text)
          .isNotBlank()
          .doesNotContain("Exception", "jackson", "java.", "Stream", "org.tallywall", "REDACTED");
      assertThat(fault.message().length()).as(text).isLessThan(2_000);
      assertThat(fault.line()).as(text).isBetween(0, rows);
      assertThat(fault.column()).as(text).isBetween(0, text.length() + 1);
    }
    boolean good = reading.card() != null;
    assertThat(good).as(text).isEqualTo(reading.faults().isEmpty());
    if (good) {
      for (Line line : reading.card().lines()) {
        assertThat(line.hands()).as(text).isNotEmpty();
        assertThat(CardSentence.of(line)).as(text).isNotBlank();
      }
      assertThat(reading.card().digest()).startsWith("sha256:");
    }
    return good ? 1 : 0;
  }

  private String spoiled(String text) {
    StringBuilder spoiled = new StringBuilder(text);
    int times = 1 + random.below(3);
    for (int time = 0; time < times && spoiled.length() > 0; time++) {
      int at = random.below(spoiled.length());
      int end = Math.min(spoiled.length(), at + 1 + random.below(random.below(8) == 0 ? 40 : 2));
      switch (random.below(6)) {
        case 0 -> spoiled.delete(at, end);
        case 1 -> spoiled.insert(at, piece());
        case 2 -> spoiled.replace(at, at + 1, String.valueOf(piece()));
        case 3 -> spoiled.insert(random.below(spoiled.length()), spoiled.substring(at, end));
        case 4 -> spoiled.insert(at, String.valueOf(piece()).repeat(1 + random.below(30)));
        default -> spoiled.setLength(random.below(20) == 0 ? at : spoiled.length());
      }
    }
    return spoiled.toString();
  }

  private char piece() {
    return PIECES.charAt(random.below(PIECES.length()));
  }
}
