package org.tallywall.experiments.invent;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.card.CardFile;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.json.JsonMapper;

/** The schema for editors passes good cards and finds what a schema can find in faulty ones. */
class CardSchemaTest {
  private static final String GOOD =
      """
      { "$schema": "card.schema.json", "card": "Breakwater card", "edition": "first", "families": [ { "family": "All", "lines": [
        { "id": "A1", "say": "one", "tiles": ["FF 11x 44x 666x 8888y z", "FFFF"], "slide": "any",
          "where": "nm: 19 28", "suits": "or one", "value": 25, "concealed": true,
          "jokers": false, "jokerless": true } ] } ] }
      """;

  private final Schema schema;

  CardSchemaTest() throws IOException {
    SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    schema = registry.getSchema(Files.readString(Path.of("cards/card.schema.json")));
  }

  private List<Error> errors(String text) {
    JsonMapper lenient =
        JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS, JsonReadFeature.ALLOW_TRAILING_COMMA)
            .build();
    return schema.validate(lenient.readTree(text).toString(), InputFormat.JSON);
  }

  @Test
  void schema_everyField_passes() {
    assertThat(errors(GOOD)).isEmpty();
  }

  @Test
  void schema_demoCard_passes() throws IOException {
    assertThat(errors(Files.readString(Path.of("cards/saltmarsh-quay.json")))).isEmpty();
  }

  @Test
  void schema_drawnCards_pass() {
    for (int lines : new int[] {12, 54}) {
      assertThat(errors(new CardInventor(2, lines).draw("Drawn").text())).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "\"value\": 25 ! \"value\": 0",
        "\"value\": 25 ! \"value\": 2.5",
        "\"value\": 25 ! \"value\": \"25\"",
        "\"value\": 25, ! ",
        "\"say\" ! \"sya\"",
        "\"any\" ! \"all\"",
        "\"or one\" ! \"one\"",
        "nm: 19 28 ! nq: 19 28",
        "666x ! 666q",
        "\"concealed\": true ! \"concealed\": \"yes\"",
        "\"family\": \"All\" ! \"family\": \"\"",
        "\"card\": ! \"name\":"
      })
  void schema_faultyCard_isFoundAndSoDoesTheReader(String good, String bad) {
    String faulty = GOOD.replace(good, bad == null ? "" : bad);

    assertThat(faulty).isNotEqualTo(GOOD);
    assertThat(errors(faulty)).isNotEmpty();
    assertThat(CardFile.json("faulty", faulty).faults()).isNotEmpty();
  }

  /** The card in the repository is the one that its own remark names. */
  @Test
  void demoCard_seedInItsRemark_givesExactlyIt() throws IOException {
    String text = Files.readString(Path.of("cards/saltmarsh-quay.json"));
    long seed = Long.parseLong(text.replaceAll("(?s).*?--seed (\\d+).*", "$1"));
    int lines = Integer.parseInt(text.replaceAll("(?s).*?--lines (\\d+).*", "$1"));

    InventedCard again = new CardInventor(seed, lines).draw("Saltmarsh Quay practice card");

    assertThat(again.text()).isEqualTo(text);
    assertThat(again.card().lines().size()).isBetween(50, 56);
  }
}
