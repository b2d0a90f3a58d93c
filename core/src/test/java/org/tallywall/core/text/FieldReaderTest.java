package org.tallywall.core.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fields taken by name; each wrong one is a fault of its own and reading goes on. */
class FieldReaderTest {
  private final Faults faults = new Faults();

  private FieldReader reader(String json) {
    Node node = LocatedJson.read(json, faults);
    return new FieldReader(node, "a study", faults, List.of("name", "deals", "level", "on", "l"));
  }

  @Test
  void fields_ofTheRightKind_areTakenWithoutFault() {
    FieldReader reader =
        reader("{\"name\": \"x\", \"deals\": 5.0, \"level\": 0.5, \"on\": true, \"l\": [1, 2]}");
    assertThat(reader.text("name", "")).isEqualTo("x");
    assertThat(reader.whole("deals", 0, 1, 5)).isEqualTo(5);
    assertThat(reader.between("level", 0, 0, 1)).isEqualTo(0.5);
    assertThat(reader.flag("on", false)).isTrue();
    assertThat(reader.list("l")).hasSize(2);
    assertThat(reader.names()).containsExactly("name", "deals", "level", "on", "l");
    assertThat(faults.any()).isFalse();
  }

  @Test
  void fields_notWritten_areTheDefaults() {
    FieldReader reader = reader("{}");
    assertThat(reader.text("name", "d")).isEqualTo("d");
    assertThat(reader.whole("deals", 7, 1, 9)).isEqualTo(7);
    assertThat(reader.between("level", 0.25, 0, 1)).isEqualTo(0.25);
    assertThat(reader.flag("on", true)).isTrue();
    assertThat(reader.list("l")).isEmpty();
    assertThat(faults.any()).isFalse();
  }

  @Test
  void fields_ofTheWrongKind_areEachAFaultAtTheirValue() {
    FieldReader reader =
        reader("{\"name\": 5,\n\"deals\": \"5\",\n\"level\": [],\n\"on\": \"yes\",\n\"l\": {}}");
    reader.text("name", "");
    reader.whole("deals", 0, 1, Long.MAX_VALUE);
    reader.between("level", 0, 0, 1);
    reader.flag("on", false);
    reader.list("l");
    assertThat(faults.faults())
        .containsExactly(
            new Fault(1, 10, "", "\"name\" is a text in double quotes, not a whole number"),
            new Fault(2, 10, "", "\"deals\" is a whole number, 1 or more, not a text"),
            new Fault(
                3, 10, "", "\"level\" is a number between 0 and 1, not a list in square brackets"),
            new Fault(4, 7, "", "\"on\" is true or false, not a text"),
            new Fault(5, 6, "", "\"l\" is a list in square brackets, not an object in braces"));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "10, 10",
    "-1, -1",
    "2.5, 2.5",
    "1e300, that",
    "1e-300, that",
    "0.000001, 0.000001"
  })
  void whole_outsideTheRange_isAFaultThatStaysShort(String number, String shown) {
    FieldReader reader = reader("{\"deals\": " + number + "}");
    assertThat(reader.whole("deals", 4, 1, 9)).isEqualTo(4);
    assertThat(faults.faults().get(0).message())
        .isEqualTo("\"deals\" is a whole number from 1 to 9, not " + shown);
  }

  @Test
  void number_thatCannotBeRead_isOneFaultAlone() {
    FieldReader reader = reader("{\"deals\": 1e999999999}");
    assertThat(reader.whole("deals", 4, 1, 9)).isEqualTo(4);
    assertThat(reader.between("deals", 0.5, 0, 1)).isEqualTo(0.5);
    assertThat(faults.faults())
        .containsExactly(
            new Fault(1, 11, "", "the number is too large to be read; numbers go up to 1e300"));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "1, 1", "-0.5, -0.5", "1e300, that", "2, 2"})
  void between_onOrOutsideItsBounds_isAFault(String number, String shown) {
    FieldReader reader = reader("{\"level\": " + number + "}");
    assertThat(reader.between("level", 0.5, 0, 1)).isEqualTo(0.5);
    assertThat(faults.faults().get(0).message())
        .isEqualTo("\"level\" is a number between 0 and 1, not " + shown);
  }

  @Test
  void field_thatIsUnknown_isNamedWithTheNearestKnownOne() {
    reader("{\n  \"naem\": \"x\"\n}");
    assertThat(faults.faults())
        .containsExactly(
            new Fault(
                2,
                3,
                "",
                "unknown field \"naem\" in a study; did you mean \"name\"?"
                    + " (known: name, deals, level, on, l)"));
  }

  /** The misspelled name says enough, and still the part is known to be wrong. */
  @Test
  void field_thatIsNeededAndMisspelled_isToldOnceAndFound() {
    FieldReader reader = reader("{ \"naem\": \"x\" }");
    int before = faults.findings();
    assertThat(reader.require("name", "its name")).isFalse();
    assertThat(faults.findings()).isGreaterThan(before);
    assertThat(faults.faults()).hasSize(1);
  }

  @Test
  void value_thatIsNoObject_isOneFaultAndHasNoFields() {
    FieldReader reader = reader("[1]");
    assertThat(reader.has("name")).isFalse();
    assertThat(reader.require("name", "its name")).isFalse();
    assertThat(faults.faults())
        .extracting(Fault::message)
        .containsExactly(
            "a study is an object in braces, not a list in square brackets",
            "the field \"name\" is missing; write its name");
  }

  /** A field may be as long as the file: neither the work nor the message grows with it. */
  @Test
  void field_ofMillionsOfLetters_isCutInItsFault() {
    reader("{\"" + "x".repeat(10_000_000) + "\": 1}");
    assertThat(faults.faults().get(0).message()).hasSizeLessThan(300).contains("xxx…\" in a study");
  }
}
