package org.tallywall.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tallywall.core.text.Fault;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.LocatedJson;

/** Reading switches from a file: every fault at once, each with its line and column. */
class RulesReaderTest {
  private final Faults faults = new Faults();

  private TableRules read(String json) {
    return RulesReader.read(LocatedJson.read(json, faults), faults);
  }

  @Test
  void noRules_areTheDefaults() {
    assertThat(RulesReader.read(null, faults)).isEqualTo(TableRules.STANDARD);
    assertThat(read("{}")).isEqualTo(TableRules.STANDARD);
    assertThat(faults.any()).isFalse();
  }

  @Test
  void someSwitches_differFromTheDefaults() {
    TableRules rules =
        read(
            """
            {
              // a winter table
              "wall.cold": "NO_CLAIM", "score.discarder": 4, "win.mayDecline": false,
              "joker.exchangePerTurn": 1,
            }
            """);
    assertThat(faults.faults()).isEmpty();
    assertThat(rules)
        .isEqualTo(
            TableRules.of(
                Map.of(
                    "wall.cold",
                    "NO_CLAIM",
                    "score.discarder",
                    4,
                    "win.mayDecline",
                    false,
                    "joker.exchangePerTurn",
                    1)));
  }

  @Test
  void everyFault_comesOutAtOnceWithItsPlace() {
    TableRules rules =
        read(
            """
            { "wall.cold": "FROSTY",
              "wall.hott": "OFF",
              "tiles.jokers": 8.5,
              "charleston.pool": "MUSH",
              "players": [4],
              "score.discarder": 3 }
            """);
    assertThat(faults.faults().stream().map(RulesReaderTest::place))
        .containsExactly("1:16", "2:3", "3:19", "4:22", "5:14");
    List<String> said = faults.faults().stream().map(Fault::message).toList();
    assertThat(said.get(0))
        .isEqualTo("the switch \"wall.cold\" may be OFF, NO_MAHJONG_CLAIM, NO_CLAIM; not FROSTY");
    assertThat(said.get(1))
        .startsWith("unknown switch \"wall.hott\"; did you mean \"wall.hot\"?")
        .endsWith("(all: tallywall rules)");
    assertThat(said.get(2)).contains("a whole number from 0 to 12; not a number");
    assertThat(said.get(3)).startsWith("not yet: \"charleston.pool\": MUSH");
    assertThat(said.get(4)).contains("\"players\" may be 4; not ");
    assertThat(rules)
        .as("the good switch still counts")
        .isEqualTo(TableRules.of(Map.of("score.discarder", 3)));
  }

  private static String place(Fault fault) {
    return fault.line() + ":" + fault.column();
  }

  @Test
  void rulesThatAreNoObject_areAFault() {
    assertThat(read("[1, 2]")).isEqualTo(TableRules.STANDARD);
    assertThat(faults.faults())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.message()).startsWith("rules are an object in braces, not ");
              assertThat(place(fault)).isEqualTo("1:1");
            });
  }

  @Test
  void nothingInPlaceOfAValue_isAFault() {
    read("{\"wall.cold\": null}");
    assertThat(faults.faults())
        .singleElement()
        .satisfies(
            fault ->
                assertThat(fault.message())
                    .contains("may be OFF, NO_MAHJONG_CLAIM, NO_CLAIM; not "));
  }
}
