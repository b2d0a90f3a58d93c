package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.text.Sha256;

/** What tells one card from another: the same for every way of typing it, new for every change. */
class CardDigestTest {
  private static final String TYPED =
      """
      { "card": "Quay", "families": [
        { "family": "Tens", "lines": [
          { "tiles": "FFFF nnnx mmmy 10z 10z", "where": "nm: 19 28", "value": 35 } ] },
        { "family": "Ladders", "lines": [
          { "id": "L2", "say": "the \\"quay\\"", "value": 30, "concealed": true,
            "tiles": ["FF 1111x 22y 3333z 99x", "FF 1111x 44y 7777z 99x"],
            "slide": "any", "suits": "or one", "jokers": false, "jokerless": false } ] } ] }
      """;

  /** The same card as compact JSON with all defaults, written out by hand. */
  private static final String CANONICAL =
      "{\"card\":\"Quay\",\"edition\":\"\",\"families\":[{\"family\":\"Tens\",\"lines\":["
          + "{\"id\":\"T1\",\"say\":\"\",\"tiles\":[\"FFFF nnnx mmmy 10z 10z\"],"
          + "\"slide\":\"none\",\"where\":\"nm: 19 28\",\"suits\":\"as written\",\"value\":35,"
          + "\"concealed\":false,\"jokers\":true,\"jokerless\":true}]},"
          + "{\"family\":\"Ladders\",\"lines\":["
          + "{\"id\":\"L2\",\"say\":\"the \\\"quay\\\"\","
          + "\"tiles\":[\"FF 1111x 22y 3333z 99x\",\"FF 1111x 44y 7777z 99x\"],"
          + "\"slide\":\"any\",\"where\":\"\",\"suits\":\"or one\",\"value\":30,"
          + "\"concealed\":true,\"jokers\":false,\"jokerless\":false}]}]}";

  /** From {@code printf '%s' CANONICAL | sha256sum} of GNU coreutils 9. */
  private static final String DIGEST =
      "sha256:0ec5dcefb8139e4de06dbb11aaeb518ccecae3ba439ddcce021d59ba1fc69ddf";

  private static Card json(String text) {
    return CardFile.json("c.json", text).orThrow();
  }

  @Test
  void digest_ofACard_isThatOfTheLineWrittenByHand() {
    Card card = json(TYPED);
    assertThat(CardDigest.canonical(card)).isEqualTo(CANONICAL);
    assertThat(card.digest()).isEqualTo(DIGEST);
    assertThat(Sha256.of(CANONICAL.getBytes(StandardCharsets.UTF_8))).isEqualTo(DIGEST);
  }

  @Test
  void digest_ofTheCanonicalText_isTheSame() {
    assertThat(json(CANONICAL).digest()).isEqualTo(DIGEST);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      quoteCharacter = '\0',
      value = {
        "{ \"card\"          # /* typed from paper */ { \"card\"",
        "\"value\": 35       # \"value\": 35.0 /* points */",
        "10z 10z\"           # 10z   10z \"",
        "nm: 19 28           # nm:19,  28",
        "\"nm: 19 28\"       # \"nm: 19 28\", \"concealed\": false, \"jokers\": true",
        "\"Quay\",           # \"Quay\", \"edition\": \"\",",
        "\"tiles\": \"FFFF nnnx mmmy 10z 10z\" # \"tiles\": [\"FFFF nnnx mmmy 10z 10z\"]",
        "\"jokers\": false   # \"jokers\": false,",
      })
  void digest_ofAnotherTypingOfTheSame_isTheSame(String from, String to) {
    assertThat(TYPED).contains(from);
    String other = TYPED.replace(from, to).replace(",,", ",");
    assertThat(json(other).digest()).isEqualTo(DIGEST);
  }

  @Test
  void digest_ofTheSameCardAsASpreadsheet_isTheSame() {
    String csv =
        """
        say;family;tiles;slide;where;suits;value;concealed;jokers;jokerless;id
        ;Tens;FFFF nnnx mmmy 10z 10z;;nm: 19 28;;35;X;yes;TRUE;
        "the ""quay\""";Ladders;FF 1111x 22y 3333z 99x|FF 1111x 44y 7777z 99x;any;;or one;30;C;no;no;L2
        """;
    assertThat(CardFile.csv("c.csv", "Quay", csv).orThrow().digest()).isEqualTo(DIGEST);
  }

  @Test
  void digest_afterAnyChange_isAnother() {
    String[][] changes = {
      {"\"Quay\"", "\"Quai\""},
      {"\"Quay\",", "\"Quay\", \"edition\": \"2\","},
      {"Tens", "Sums"},
      {"\"FFFF nnnx", "\"FFF nnnnx"},
      {"nm: 19 28", "nm: 28 19"},
      {"35 }", "30 }"},
      {"35 }", "35, \"id\": \"T2\" }"},
      {"35 }", "35, \"say\": \"x\" }"},
      {"35 }", "35, \"suits\": \"or one\" }"},
      {"35 }", "35, \"slide\": \"any\" }"},
      {"35 }", "35, \"concealed\": true }"},
      {"35 }", "35, \"jokerless\": false }"},
      {"35 }", "35, \"jokers\": false }"},
      {"\"any\"", "\"by-two\""},
      {"22y", "33y"},
    };
    Set<String> digests = new HashSet<>(Set.of(DIGEST));
    for (String[] change : changes) {
      assertThat(TYPED).contains(change[0]);
      String changed = TYPED.replace("10z 10z", "1z 1z 00").replace(change[0], change[1]);
      assertThat(digests.add(json(changed).digest())).as(change[1]).isTrue();
    }
  }
}
