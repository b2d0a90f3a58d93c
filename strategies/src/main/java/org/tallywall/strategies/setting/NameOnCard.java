package org.tallywall.strategies.setting;

import java.util.List;
import java.util.Optional;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardLimits;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Shown;

/**
 * The name of a part of the card, or nothing. Which names there are is known once the card is: case
 * does not matter, as cards are typed by hand.
 *
 * @param part what is named
 */
record NameOnCard(CardPart part) implements Kind<String> {
  /** As many names as a message can list. */
  private static final int FEW = 20;

  @Override
  public boolean allows(Object written) {
    return written instanceof String name
        && name.length() <= CardLimits.LONGEST_NAME
        && !Shown.broken(name);
  }

  @Override
  public String read(Object written) {
    return (String) written;
  }

  @Override
  public Object write(String value) {
    return value;
  }

  @Override
  public String range(String usual) {
    return "the name of " + part.meaning() + ", or \"\" for none";
  }

  @Override
  public Optional<String> unfit(Object written, Card card) {
    String name = (String) written;
    List<String> names = part.names(card);
    if (name.isEmpty() || names.stream().anyMatch(name::equalsIgnoreCase)) {
      return Optional.empty();
    }
    List<String> shown = names.stream().map(Shown::word).toList();
    return Optional.of(
        "the card \"%s\" has no %s \"%s\""
                .formatted(Shown.word(card.name()), part.word(), Shown.word(name))
            + (shown.size() <= FEW ? Nearest.advice(name, shown) : Nearest.hint(name, shown)));
  }
}
