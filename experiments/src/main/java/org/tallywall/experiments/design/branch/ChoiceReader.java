package org.tallywall.experiments.design.branch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;
import org.tallywall.experiments.design.PlayersReader;
import org.tallywall.experiments.study.Bounds;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Reads the options of a branch: a list of words, or an object with a name for each option, which
 * is a word or a player.
 */
final class ChoiceReader {
  private static final String OPTIONS = "options";

  private final FieldReader fields;
  private final Faults faults;
  private final PlayersReader players;
  private final BranchMoment moment;
  private final List<String> known;

  ChoiceReader(FieldReader fields, Faults faults, PlayersReader players, BranchMoment moment) {
    this.fields = fields;
    this.faults = faults;
    this.players = players;
    this.moment = moment;
    this.known = BranchOption.names(moment);
  }

  /** The options; of no use where one has a fault. */
  List<BranchChoice> read() {
    return fields.node(OPTIONS).value() instanceof Node.Fields named ? named(named) : words();
  }

  private List<BranchChoice> words() {
    List<BranchChoice> choices = new ArrayList<>();
    for (Node node : fields.list(OPTIONS)) {
      BranchChoice choice = word(node);
      if (choice != null && choices.contains(choice)) {
        faults.fault(node.place(), "the option \"%s\" stands twice".formatted(choice.name()));
      } else if (choice != null) {
        choices.add(choice);
      }
    }
    if (fields.list(OPTIONS).size() < 2) {
      fields.fault(OPTIONS, "two options are compared: " + wanted());
    }
    return choices;
  }

  private BranchChoice word(Node node) {
    String text = node.value() instanceof String word ? word : "";
    Optional<BranchOption> found = option(text);
    if (found.isPresent()) {
      return BranchChoice.of(found.get());
    }
    faults.fault(
        node.place(),
        known.isEmpty()
            ? "at a %s the options are players with names: %s".formatted(moment.text(), wanted())
            : "no option of a %s is called \"%s\"%s"
                .formatted(moment.text(), text, Nearest.advice(text, known)));
    return null;
  }

  private Optional<BranchOption> option(String text) {
    return BranchOption.of(text).filter(option -> option.moment() == moment);
  }

  private String wanted() {
    return known.isEmpty()
        ? "\"options\": {\"keep pairs\": {\"player\": \"reckoner\", \"passes.keep-pairs\": true},"
            + " \"as usual\": \"reckoner\"}"
        : String.join(", ", known);
  }

  private List<BranchChoice> named(Node.Fields object) {
    List<BranchChoice> choices = new ArrayList<>();
    if (object.values().size() < 2) {
      fields.fault(OPTIONS, "two options are compared: " + wanted());
    } else if (object.values().size() > Bounds.MOST_WAYS) {
      fields.fault(OPTIONS, "a study compares at most " + Bounds.MOST_WAYS + " options");
      return choices;
    }
    for (Map.Entry<String, Node> entry : object.values().entrySet()) {
      BranchChoice choice = named(entry.getKey(), entry.getValue(), object);
      if (choice != null) {
        choices.add(choice);
      }
    }
    return choices;
  }

  private BranchChoice named(String name, Node node, Node.Fields object) {
    Optional<BranchOption> what =
        node.value() instanceof String word ? option(word) : Optional.empty();
    boolean taken = BranchOption.of(name).isPresent() && !BranchOption.of(name).equals(what);
    players.checkName(name, object.places().get(name));
    if (taken) {
      faults.fault(
          object.places().get(name),
          "\"%s\" means something else to the program; give the option another name"
              .formatted(name));
      return null;
    }
    if (what.isPresent()) {
      return new BranchChoice(name, what, Optional.empty());
    }
    PlayerSpec player = players.fair(node);
    return player == null ? null : BranchChoice.of(name, player);
  }
}
