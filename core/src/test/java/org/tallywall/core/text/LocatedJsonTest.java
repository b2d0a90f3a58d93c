package org.tallywall.core.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** JSON with places; what is no JSON is explained to the person who typed it. */
class LocatedJsonTest {
  private final Faults faults = new Faults();

  @Test
  void object_withCommentsAndTrailingCommas_keepsValuesAndPlaces() {
    Node node =
        LocatedJson.read(
            """
            // a card
            { "name": "x", /* two */ "list": [1, true,
              "three",], "none": null,
            }
            """,
            faults);
    assertThat(faults.any()).isFalse();
    Node.Fields fields = (Node.Fields) node.value();
    assertThat(node.place()).isEqualTo(new Place(2, 1));
    assertThat(fields.values().keySet()).containsExactly("name", "list", "none");
    assertThat(fields.places().get("list")).isEqualTo(new Place(2, 26));
    assertThat(fields.values().get("name")).isEqualTo(new Node(new Place(2, 11), "x"));
    assertThat(fields.values().get("none").value()).isNull();
    List<Node> items = ((Node.Items) fields.values().get("list").value()).values();
    assertThat(items)
        .containsExactly(
            new Node(new Place(2, 35), BigDecimal.ONE),
            new Node(new Place(2, 38), true),
            new Node(new Place(3, 3), "three"));
  }

  @Test
  void field_writtenTwice_isAFaultAndReadingGoesOn() {
    Node node = LocatedJson.read("{\"a\": 1,\n \"a\": 2, \"b\": 3, \"b\": 4}", faults);
    assertThat(node).isNotNull();
    assertThat(faults.faults())
        .containsExactly(
            new Fault(2, 2, "", "the field \"a\" is there twice; take one out"),
            new Fault(2, 18, "", "the field \"b\" is there twice; take one out"));
  }

  static Stream<Arguments> broken() {
    return Stream.of(
        Arguments.of("", 1, 1, "the file is empty; an object in braces is expected"),
        Arguments.of(" // only this", 1, 1, "the file is empty"),
        Arguments.of("{\n\"a\": [1,", 2, 9, "the text ends too early; close every brace"),
        Arguments.of("{\"a\": \"b", 1, 9, "the text ends too early; close every brace"),
        Arguments.of("{} /* b", 1, 8, "a comment is not closed; write */ at its end"),
        Arguments.of("{\"a\": 1\n\"b\": 2}", 1, 8, "a comma is missing here"),
        Arguments.of("{\"a\": \"x\" // why\n\n \"b\": 2}", 1, 10, "a comma is missing here"),
        Arguments.of("{\n\"a\": [1, 2]\n \"b\": 2}", 2, 12, "a comma is missing here"),
        Arguments.of("{\n\"a\": {}\n \"b\": 2}", 2, 8, "a comma is missing here"),
        Arguments.of("[true null]", 1, 6, "a comma is missing here"),
        Arguments.of("{\"a\": [1}", 1, 9, "] is expected here, not }"),
        Arguments.of("{\"a\" 1}", 1, 6, "a colon is missing before \"1\""),
        Arguments.of("{a: 1}", 1, 2, "a field's name in double quotes belongs here, not \"a\""),
        Arguments.of("{\"a\": 'b'}", 1, 7, "\"'\" is not expected here"),
        Arguments.of("{\"a\": “b”}", 1, 7, "\"“\" is a curly quote; turn smart quotes off"),
        Arguments.of("{”a”: 1}", 1, 2, "\"”\" is a curly quote; turn smart quotes off"),
        Arguments.of("{\"a\": \"b”\n}", 1, 10, "a curly quote in this line: turn smart quotes off"),
        Arguments.of("{\"a\": \"b”}", 1, 11, "a curly quote in this line: turn smart quotes off"),
        Arguments.of("{\"a\": yes}", 1, 7, "\"yes\" is not a value; write a text in double quotes"),
        Arguments.of("{\"a\": FALSE}", 1, 7, "\"FALSE\" is not a value"),
        Arguments.of("{\"a\": 05}", 1, 8, "a number is written wrongly"),
        Arguments.of("{\"a\": 5e}", 1, 8, "a number is written wrongly"),
        Arguments.of("{\"a\": \"b\nc\"}", 1, 9, "a text goes on past the end of its line"),
        Arguments.of("{\"a\": \"\\q\"}", 1, 9, "the letter after a backslash in a text is not one"),
        Arguments.of("{} {}", 1, 4, "something follows the end of the object; take it out"),
        Arguments.of("\u0000", 1, 1, "the text is garbled here"),
        Arguments.of("[".repeat(2_000), 1, 102, "it is nested too deeply; this program reads 100 "),
        Arguments.of(
            "[" + "7".repeat(2_000),
            1,
            2_002,
            "a number in it is too long; write at most 1000 digits"));
  }

  @ParameterizedTest
  @MethodSource("broken")
  void text_thatIsNoJson_isOneFaultInPlainWords(String text, int line, int column, String why) {
    assertThat(LocatedJson.read(text, faults)).isNull();
    assertThat(faults.faults()).hasSize(1);
    Fault fault = faults.faults().get(0);
    assertThat(fault.message()).contains(why).doesNotContain("Source", "Stream", "code 3", "CTRL");
    assertThat(fault.line()).isEqualTo(line);
    assertThat(fault.column()).isEqualTo(column);
  }

  @ParameterizedTest
  @CsvSource({
    "1e9999999999, large",
    "-1e9999999999, large",
    "1e999999999, large",
    "1e301, large",
    "1E+301, large",
    "1e-9999999999, close to 0",
    "-3.5E-9999999999, close to 0",
    "1e-301, close to 0",
    "0e9999999999, large",
    "0e999999999, close to 0",
  })
  void number_beyondAllBounds_isAFaultWhereItStands(String number, String why) {
    Node list = LocatedJson.read("[1,\n  " + number + ", 7]", faults);
    assertThat(faults.faults()).hasSize(1);
    assertThat(faults.faults().get(0).message()).contains("number is too " + why);
    assertThat(faults.faults().get(0).line()).isEqualTo(2);
    assertThat(faults.faults().get(0).column()).isEqualTo(3);
    assertThat(((Node.Items) list.value()).values()).hasSize(3);
  }

  /** Whoever takes a number for a whole one, or writes it out, has little work with it. */
  @ParameterizedTest
  @CsvSource({"1e300", "-1e300", "1e-300", "0.00", "25"})
  void number_withinTheBounds_isReadAsWritten(String number) {
    Node node = LocatedJson.read(number, faults);
    assertThat(faults.any()).isFalse();
    assertThat(node.value()).isEqualTo(new BigDecimal(number));
    assertThat(new BigDecimal(number).toPlainString()).hasSizeLessThan(400);
  }

  @Test
  void text_withHalfACharacter_isAFaultWhereItStands() {
    LocatedJson.read("{\"a\": \"x\\ud800y\",\n \"\\udc00\": \"\\ud83d\\ude00\"}", faults);
    assertThat(faults.faults())
        .containsExactly(
            new Fault(
                1, 7, "", "\"x\\u{d800}y\" holds half a character; take it out or write it whole"),
            new Fault(
                2,
                9,
                "",
                "this is not JSON: a field's name holds half a character; take it out or write it"
                    + " whole"));
  }

  @Test
  void file_ofMoreValuesThanAreRead_isRefusedWithTheBound() {
    assertThat(LocatedJson.read("[" + "0,".repeat(FileLimits.MOST_VALUES) + "]", faults)).isNull();
    assertThat(faults.faults()).hasSize(1);
    assertThat(faults.faults().get(0).message())
        .contains("more values than this program reads (1000000)");
  }

  @Test
  void kind_ofAValue_isNamedInWords() {
    Node list = LocatedJson.read("[\"a\", 5, 5.0, 5.5, true, null, {}, []]", faults);
    assertThat(((Node.Items) list.value()).values().stream().map(Node::kind))
        .containsExactly(
            "a text",
            "a whole number",
            "a whole number",
            "a number",
            "true or false",
            "null",
            "an object in braces",
            "a list in square brackets");
  }
}
