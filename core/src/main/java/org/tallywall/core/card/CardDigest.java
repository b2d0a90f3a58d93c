package org.tallywall.core.card;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.text.Sha256;
import tools.jackson.databind.json.JsonMapper;

/**
 * The digest of a card: SHA-256 of the card as compact JSON with all defaults written out, so that
 * comments, spacing and the file's format do not change it.
 */
public final class CardDigest {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private CardDigest() {}

  /**
   * The digest.
   *
   * @param card any card
   * @return "sha256:" and 64 hexadecimal digits
   */
  static String of(Card card) {
    return Sha256.of(canonical(card).getBytes(StandardCharsets.UTF_8));
  }

  /**
   * The card as compact JSON, fields in their fixed order, defaults written out.
   *
   * @param card any card
   * @return one line of JSON
   */
  public static String canonical(Card card) {
    List<Object> families = new ArrayList<>();
    for (Family family : card.families()) {
      Map<String, Object> section = new LinkedHashMap<>();
      section.put("family", family.name());
      section.put("lines", family.lines().stream().map(CardDigest::line).toList());
      families.add(section);
    }
    Map<String, Object> whole = new LinkedHashMap<>();
    whole.put("card", card.name());
    whole.put("edition", card.edition());
    whole.put("families", families);
    return MAPPER.writeValueAsString(whole);
  }

  private static Map<String, Object> line(Line line) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", line.id());
    fields.put("say", line.say());
    fields.put("tiles", line.printed().tiles());
    fields.put("slide", line.printed().slide().text());
    fields.put("where", line.printed().where().toString());
    fields.put("suits", line.printed().suits().text());
    fields.put("value", line.terms().value());
    fields.put("concealed", line.terms().concealed());
    fields.put("jokers", line.terms().jokers());
    fields.put("jokerless", line.terms().jokerless());
    return fields;
  }
}
