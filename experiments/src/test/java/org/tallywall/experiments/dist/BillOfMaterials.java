package org.tallywall.experiments.dist;

import java.nio.file.Path;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The bill of materials as tests read it: which libraries the program holds, in its own order. */
record BillOfMaterials(String version, List<Library> libraries) {

  /** One library; its license by the short name of the SPDX list, its digest in hex. */
  record Library(String name, String version, String license, String sha256) {}

  static BillOfMaterials read(Path file) {
    JsonNode bill = JsonMapper.shared().readTree(file);
    return new BillOfMaterials(
        bill.at("/metadata/component/version").asString(),
        bill.get("components").valueStream().map(BillOfMaterials::library).toList());
  }

  private static Library library(JsonNode component) {
    return new Library(
        component.get("name").asString(),
        component.get("version").asString(),
        component.at("/licenses/0/license/id").asString(),
        component
            .get("hashes")
            .valueStream()
            .filter(hash -> hash.get("alg").asString().equals("SHA-256"))
            .findFirst()
            .orElseThrow()
            .get("content")
            .asString());
  }
}
