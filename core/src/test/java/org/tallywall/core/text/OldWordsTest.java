package org.tallywall.core.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OldWordsTest {
  private final Faults faults = new Faults();

  @Test
  void renewed_fieldsAndGroupsAndTheSettingNamed_areTodays() {
    Node.Fields study =
        fields(
            """
            { "faults-borne": 3,
              "player": { "defence": { "hold-back": true }, "defence.last-wall": 9 },
              "setting": "defence.last-wall" }
            """);
    assertThat(study.values().keySet())
        .containsExactly("failed-deals-allowed", "player", "setting");
    assertThat(((Node.Fields) study.values().get("player").value()).values().keySet())
        .containsExactly("defense", "defense.last-wall");
    assertThat(study.values().get("setting").value()).isEqualTo("defense.last-wall");
  }

  @Test
  void renewed_anOldWordTwice_isSaidOnce() {
    fields("{ \"defence\": { \"defence.x\": 1 }, \"arms\": [ { \"defence\": 2 } ] }");
    assertThat(faults.warnings())
        .extracting(Fault::message)
        .containsExactly("\"defence\" is written \"defense\" today");
    assertThat(faults.faults()).isEmpty();
  }

  @Test
  void renewed_bothWordsSideBySide_keepsBoth() {
    Node.Fields both = fields("{ \"defence\": 1, \"defense\": 2 }");
    assertThat(both.values().keySet()).containsExactly("defence", "defense");
    assertThat(faults.warnings()).isEmpty();
  }

  @Test
  void renewed_otherWords_areLeft() {
    Node.Fields study = fields("{ \"defenceless\": \"defence\", \"question\": \"defence.x\" }");
    assertThat(study.values().keySet()).containsExactly("defenceless", "question");
    assertThat(study.values().get("question").value()).isEqualTo("defence.x");
    assertThat(faults.warnings()).isEmpty();
  }

  private Node.Fields fields(String json) {
    Node root = LocatedJson.read(json, faults);
    return (Node.Fields) OldWords.renewed(root, faults).value();
  }
}
