package org.tallywall.experiments.dist;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Guards what is taken out of the bill of materials, by a bill small enough to read. */
class BillTrimmerTest {

  private static final String BILL =
      """
      {
        "metadata": {
          "tools": { "components": [ { "name": "maker", "hashes": [ { "alg": "MD5" } ] } ] },
          "component": { "bom-ref": "pkg:maven/org.tallywall/program@1" },
          "properties": [ { "name": "maven.goal" } ]
        },
        "components": [
          { "bom-ref": "pkg:maven/org.tallywall/module@1" },
          { "bom-ref": "pkg:maven/b/deep@3",
            "hashes": [ { "alg": "MD5" }, { "alg": "SHA-256" }, { "alg": "SHA3-512" } ],
            "externalReferences": [ { "type": "website" }, { "type": "distribution-intake" } ] },
          { "bom-ref": "pkg:maven/a/direct@2", "hashes": [], "externalReferences": [] }
        ],
        "dependencies": [
          { "ref": "pkg:maven/org.tallywall/program@1",
            "dependsOn": [ "pkg:maven/org.tallywall/module@1", "pkg:maven/a/direct@2" ] },
          { "ref": "pkg:maven/org.tallywall/module@1", "dependsOn": [ "pkg:maven/b/deep@3" ] },
          { "ref": "pkg:maven/b/deep@3", "dependsOn": [] },
          { "ref": "pkg:maven/a/direct@2", "dependsOn": [ "pkg:maven/b/deep@3" ] }
        ]
      }
      """;

  private static final String TRIMMED =
      """
      {
        "metadata": {
          "tools": { "components": [ { "name": "maker" } ] },
          "component": { "bom-ref": "pkg:maven/org.tallywall/program@1" }
        },
        "components": [
          { "bom-ref": "pkg:maven/b/deep@3",
            "hashes": [ { "alg": "SHA-256" } ],
            "externalReferences": [ { "type": "website" } ] },
          { "bom-ref": "pkg:maven/a/direct@2", "hashes": [], "externalReferences": [] }
        ],
        "dependencies": [
          { "ref": "pkg:maven/a/direct@2", "dependsOn": [ "pkg:maven/b/deep@3" ] },
          { "ref": "pkg:maven/b/deep@3", "dependsOn": [] },
          { "ref": "pkg:maven/org.tallywall/program@1",
            "dependsOn": [ "pkg:maven/a/direct@2", "pkg:maven/b/deep@3" ] }
        ]
      }
      """;

  @Test
  void trim_billOfProgramWithAModule_leavesLibrariesAndWhatCanBeTrusted() {
    JsonNode bill = JsonMapper.shared().readTree(BILL);

    BillTrimmer.trim((ObjectNode) bill);

    assertThat(bill).isEqualTo(JsonMapper.shared().readTree(TRIMMED));
  }
}
