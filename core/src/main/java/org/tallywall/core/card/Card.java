package org.tallywall.core.card;

import java.util.List;
import java.util.Optional;

/**
 * A card: families of lines.
 *
 * @param name what reports call it
 * @param edition which edition it is, or empty
 * @param families its sections in the order printed
 */
public record Card(String name, String edition, List<Family> families) {
  /**
   * A card.
   *
   * @param name what reports call it
   * @param edition which edition it is
   * @param families its sections
   */
  public Card {
    families = List.copyOf(families);
  }

  /**
   * All lines in the order of the card.
   *
   * @return a fresh list
   */
  public List<Line> lines() {
    return families.stream().flatMap(family -> family.lines().stream()).toList();
  }

  /**
   * The line with an id.
   *
   * @param id the id as in the file
   * @return the line, or nothing
   */
  public Optional<Line> line(String id) {
    return lines().stream().filter(line -> line.id().equals(id)).findFirst();
  }

  /**
   * What tells one card from another, whatever file it was read from.
   *
   * @return "sha256:" and 64 hexadecimal digits
   */
  public String digest() {
    return CardDigest.of(this);
  }
}
