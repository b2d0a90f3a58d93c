package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Slips that leave a legal card: each must change the sentence of exactly the line in which it was
 * made, and a comparison of the two typings must name that line alone.
 */
class PlantedSlipsTest {
  private static final Map<String, String> LINES = new LinkedHashMap<>();

  static {
    LINES.put("L1", "'tiles': '1111x 22y 333x 444z 55y', 'slide': 'any', 'value': 25");
    LINES.put("L2", "'tiles': 'FFF 33x 777x 5555y 99z', 'value': 25");
    LINES.put(
        "L3", "'tiles': '4444x 55y 666y 777y 88z', 'slide': 'any', 'suits': 'or one', 'value': 30");
    LINES.put("L4", "'tiles': '5555x 555y 555z (RRRR|GGGG|0000)', 'slide': 'any', 'value': 30");
    LINES.put("L5", "'tiles': 'uuuu 222x 44x 666y 88y', 'value': 30");
    LINES.put("L6", "'tiles': '11x 44x 777x DDDy DDDDz', 'value': 25");
    LINES.put("L7", "'tiles': 'FFFF 2048x 222y 888z', 'value': 25");
    LINES.put("L8", "'tiles': 'FFF 333x 555x 777x nny', 'slide': 'by-two', 'value': 30");
    LINES.put(
        "L9",
        "'tiles': ['FF 44x 666x 8888y (NNN|SSS)', 'FF 22x 666x 8888y (EEE|WWW)'], 'value': 30");
    LINES.put(
        "L10", "'tiles': 'FFFF nnnx mmmy 10z 10z', 'where': 'nm: 19 28 37 46 55', 'value': 35");
    LINES.put("L11", "'tiles': 'NEWS 2x 2x 2x 444y 8888z', 'value': 30");
    LINES.put(
        "L12",
        "'tiles': ['777x 77x 1111y 333z RR', '777x 77x 1111y 333z GG'], 'concealed': true, 'value': 35");
    LINES.put("L13", "'tiles': '11b 33c 55d 77b 99c NN SS', 'concealed': true, 'value': 50");
  }

  private static Card card(Map<String, String> lines) {
    List<String> texts =
        lines.entrySet().stream()
            .map(line -> "{ 'id': '" + line.getKey() + "', " + line.getValue() + " }")
            .map(line -> line.replace('\'', '"'))
            .toList();
    return CardTexts.read(texts.toArray(new String[0])).orThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      quoteCharacter = '\0',
      value = {
        // a wrong suit letter
        "L1 # 22y # 22x",
        "L1 # 444z # 444y",
        "L1 # 333x # 333z",
        "L2 # 777x # 777y",
        "L2 # 99z # 99x",
        "L2 # 5555y # 5555z",
        "L3 # 666y # 666z",
        "L4 # 555z # 555y",
        "L5 # 44x # 44y",
        "L6 # DDDDz # DDDDy",
        "L6 # DDDy # DDDx",
        "L7 # 2048x # 2048y",
        "L8 # nny # nnx",
        "L10 # mmmy # mmmx",
        "L10 # 10z 10z # 10z 10y",
        "L13 # 33c # 33b",
        // a wrong digit or letter
        "L1 # 55y # 66y",
        "L2 # 33x # 44x",
        "L7 # 2048x # 2248x",
        "L8 # nny # 77y",
        "L11 # NEWS # NEWW",
        "L13 # 55d # 66d",
        "L5 # uuuu # NNNN",
        "L6 # DDDDz # RRRR",
        // tiles in the wrong group, a lost space that joins two groups
        "L2 # 33x 777x # 333x 77x",
        "L2 # FFF 33x # FF 333x",
        "L11 # 2x 2x 2x # 222x",
        "L12 # ['777x 77x # ['77777x",
        "L7 # 2048x 222y # 204x 2228y",
        // something left out or put in
        "L1 # 'slide': 'any', #",
        "L1 # 'any' # 'by-two'",
        "L8 # 'by-two' # 'any'",
        "L3 # 'suits': 'or one', #",
        "L4 # |0000) # )",
        "L4 # (RRRR|GGGG|0000) # RRRR",
        "L9 # |SSS) # |EEE)",
        "L9 # , 'FF 22x 666x 8888y (EEE|WWW)'] # ]",
        "L12 # , '777x 77x 1111y 333z GG'] # ]",
        "L10 # 55', # 56',",
        "L10 # 46 55 # 46",
        "L10 # 'where': 'nm: 19 28 37 46 55', #",
        // value, concealed, jokers, jokerless
        "L1 # 'value': 25 # 'value': 30",
        "L12 # 'value': 35 # 'value': 53",
        "L12 # 'concealed': true, #",
        "L2 # 'value' # 'concealed': true, 'value'",
        "L2 # 'value' # 'jokers': false, 'value'",
        "L3 # 'value' # 'jokerless': false, 'value'",
        "L13 # 'value' # 'jokerless': true, 'value'",
      })
  void slip_inOneLine_isSeenInThatLineAlone(String id, String right, String wrong) {
    assertThat(LINES.get(id)).contains(right);
    Map<String, String> slipped = new LinkedHashMap<>(LINES);
    slipped.put(id, LINES.get(id).replace(right, wrong == null ? "" : wrong));
    Card paper = card(LINES);
    Card typed = card(slipped);

    List<CardDifference> differences = CardDifference.between(paper, typed);

    assertThat(differences).hasSize(1);
    assertThat(differences.get(0).first()).isEqualTo(id);
    assertThat(differences.get(0).second()).isEqualTo(id);
    assertThat(differences.get(0).what()).isNotEmpty();
    for (Line line : paper.lines()) {
      Line other = typed.line(line.id()).orElseThrow();
      boolean same = CardSentence.of(line).equals(CardSentence.of(other));
      assertThat(same).as(line.id()).isEqualTo(!line.id().equals(id));
    }
  }
}
