package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.Shown;

/** Reads a card from JSON into a draft. */
final class JsonCardReader {
  private static final List<String> CARD = List.of("card", "edition", "families");
  private static final List<String> FAMILY = List.of("family", "lines");
  private static final List<String> LINE =
      List.of(
          "id",
          "say",
          "tiles",
          "slide",
          "where",
          "suits",
          "value",
          "concealed",
          "jokers",
          "jokerless");

  /** By which an editor finds the schema; of no meaning for the card. */
  private static final String SCHEMA = "$schema";

  private final Faults faults;
  private final CardRoom room;
  private final List<String> families = new ArrayList<>();
  private final List<Node> nodes = new ArrayList<>();
  private final List<LineDraft> lines = new ArrayList<>();

  /**
   * A reader.
   *
   * @param faults takes the faults
   */
  JsonCardReader(Faults faults) {
    this.faults = faults;
    this.room = new CardRoom(faults);
  }

  /**
   * Reads the text of a file.
   *
   * @param text the whole file
   * @return the draft, or null where the text is not JSON
   */
  CardDraft read(String text) {
    Node root = LocatedJson.read(text, faults);
    if (root == null) {
      return null;
    }
    if (root.value() instanceof Node.Fields fields) {
      fields.values().remove(SCHEMA);
    }
    FieldReader card = new FieldReader(root, "a card", faults, CARD);
    card.require("card", "its name, as in \"card\": \"Our practice card\"");
    String name = room.name(card.text("card", ""), "the card's name", card.place("card"));
    String edition = room.name(card.text("edition", ""), "the edition", card.place("edition"));
    notBlank(card, "card", "the card's name is empty; reports need one");
    if (card.require("families", "a list of families with their lines")) {
      for (Node family : card.list("families")) {
        family(family);
      }
    }
    CardDraft draft = new CardDraft(name, edition, families, lines);
    LineIds.fill(draft, faults);
    for (int at = 0; at < lines.size(); at++) {
      line(nodes.get(at), lines.get(at));
    }
    return draft;
  }

  private void family(Node node) {
    if (!room.forFamily(families, node.place())) {
      return;
    }
    FieldReader family = new FieldReader(node, "a family", faults, FAMILY, CardWords.FAMILY, "");
    family.require("family", "what this section of the card is called");
    String name =
        room.name(family.text("family", "").strip(), "a family's name", family.place("family"));
    notBlank(family, "family", "the family's name is empty; reports need one");
    if (!families.contains(name)) {
      families.add(name);
    } else if (!name.isEmpty()) {
      family.fault(
          "family",
          "the family \"" + Shown.word(name) + "\" is there twice; put its lines together");
    }
    if (family.require("lines", "the list of its lines")) {
      for (Node line : family.list("lines")) {
        if (!room.forLine(lines, line.place())) {
          return;
        }
        nodes.add(line);
        lines.add(draft(name, line));
      }
    }
  }

  private LineDraft draft(String family, Node node) {
    LineDraft draft = new LineDraft(family, node.place());
    if (node.value() instanceof Node.Fields fields
        && fields.values().get("id") != null
        && fields.values().get("id").value() instanceof String id) {
      draft.idPlace = fields.values().get("id").place();
      draft.id = room.name(id.strip(), "an id", draft.idPlace);
    }
    return draft;
  }

  private void line(Node node, LineDraft draft) {
    FieldReader line = new FieldReader(node, "a line", faults, LINE, CardWords.LINE, draft.id);
    line.text("id", "");
    notBlank(line, "id", "the id is empty; leave the field out to have one made");
    draft.say = room.name(line.text("say", ""), "\"say\"", line.place("say"));
    if (line.require("tiles", "its tiles, as in \"tiles\": \"FFF 33x 777x 5555y 99z\"")) {
      tiles(line, draft);
    }
    draft.slide = typed(line, "slide", draft.slide);
    draft.where = room.hand(typed(line, "where", draft.where), "\"where\"");
    draft.suits = typed(line, "suits", draft.suits);
    line.require("value", "its points, as in \"value\": 25");
    draft.value = line.whole("value", 1, 1, CardLimits.MOST_VALUE);
    draft.concealed = line.flag("concealed", false);
    draft.jokers = line.flag("jokers", true);
    draft.jokerless = line.has("jokerless") ? (Boolean) line.flag("jokerless", true) : null;
  }

  private static void notBlank(FieldReader reader, String field, String message) {
    if (reader.has(field) && reader.node(field).value() instanceof String text && text.isBlank()) {
      reader.fault(field, message);
    }
  }

  private static Typed typed(FieldReader line, String field, Typed otherwise) {
    return line.has(field)
        ? new Typed(line.text(field, otherwise.text()), line.place(field).plus(1))
        : otherwise;
  }

  private void tiles(FieldReader line, LineDraft draft) {
    Node tiles = line.node("tiles");
    List<Node> hands = tiles.value() instanceof Node.Items list ? list.values() : List.of(tiles);
    if (hands.isEmpty()) {
      line.fault("tiles", "the line has no tiles; write one hand of 14 tiles");
    }
    for (Node hand : hands) {
      if (hand.value() instanceof String text) {
        draft.tiles.add(room.hand(new Typed(text, hand.place().plus(1)), "a hand"));
      } else {
        faults.fault(
            hand.place(), draft.id, "tiles are a text in double quotes, not " + hand.kind());
      }
    }
  }
}
