package org.tallywall.experiments.dist;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Makes the bill of materials that is checked in from what the Maven plugin writes: the profile
 * "bill" runs it. Modules of this project go, for they change with every line of source and are the
 * program itself; so do digests that nobody should trust any more, and addresses of places to
 * upload to. What stays is the same for whoever makes it, until a library changes.
 */
final class BillTrimmer {

  private static final String OWN = "pkg:maven/org.tallywall/";
  private static final Set<String> DIGESTS = Set.of("SHA-256", "SHA-512");
  private static final Set<String> ADDRESSES = Set.of("website", "vcs");

  private BillTrimmer() {}

  /** Arguments: the file that the plugin wrote, the file to write. */
  public static void main(String[] arguments) throws IOException {
    ObjectNode bill = (ObjectNode) JsonMapper.shared().readTree(Path.of(arguments[0]));
    trim(bill);
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
    Files.writeString(
        Path.of(arguments[1]),
        JsonMapper.shared().writer().with(printer).writeValueAsString(bill) + "\n");
  }

  static void trim(ObjectNode bill) {
    ObjectNode metadata = (ObjectNode) bill.get("metadata");
    metadata.remove("properties");
    metadata.at("/tools/components").forEach(tool -> ((ObjectNode) tool).remove("hashes"));
    keep((ArrayNode) bill.get("components"), library -> !isOwn(library.get("bom-ref")));
    for (JsonNode library : bill.get("components")) {
      keep((ArrayNode) library.get("hashes"), hash -> DIGESTS.contains(text(hash, "alg")));
      keep(
          (ArrayNode) library.get("externalReferences"),
          address -> ADDRESSES.contains(text(address, "type")));
    }
    bill.set("dependencies", withoutModules(bill));
  }

  /** The program needs whatever its modules need, in one step. */
  private static ArrayNode withoutModules(ObjectNode bill) {
    Map<String, Set<String>> needs = new TreeMap<>();
    String program = bill.at("/metadata/component/bom-ref").asString();
    for (JsonNode dependency : bill.get("dependencies")) {
      boolean own = isOwn(dependency.get("ref"));
      Set<String> needed =
          needs.computeIfAbsent(
              own ? program : text(dependency, "ref"), ref -> new LinkedHashSet<>());
      dependency
          .get("dependsOn")
          .valueStream()
          .filter(ref -> !isOwn(ref))
          .forEach(ref -> needed.add(ref.asString()));
    }
    ArrayNode dependencies = bill.arrayNode();
    needs.forEach(
        (ref, needed) -> {
          ObjectNode dependency = dependencies.addObject().put("ref", ref);
          needed.stream().sorted().forEach(dependency.putArray("dependsOn")::add);
        });
    return dependencies;
  }

  private static void keep(ArrayNode nodes, Predicate<JsonNode> wanted) {
    Collection<JsonNode> kept = nodes.valueStream().filter(wanted).toList();
    nodes.removeAll().addAll(kept);
  }

  private static boolean isOwn(JsonNode ref) {
    return ref.asString().startsWith(OWN);
  }

  private static String text(JsonNode node, String field) {
    return node.get(field).asString();
  }
}
