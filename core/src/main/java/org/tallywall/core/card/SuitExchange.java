package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * Exchanges the suits, each with its dragon, in tiles and cards. A position and its card exchanged
 * alike are the same position: a player that judges by the card must make the same choice.
 */
public final class SuitExchange {
  /** All six, the first of which leaves everything as it is. */
  public static final List<SuitExchange> ALL = all();

  private final int[] suits;

  private SuitExchange(int... suits) {
    this.suits = suits;
  }

  private static List<SuitExchange> all() {
    List<SuitExchange> all = new ArrayList<>();
    for (int bams = 0; bams < 3; bams++) {
      for (int step = 1; step <= 2; step++) {
        int craks = (bams + step) % 3;
        all.add(new SuitExchange(bams, craks, 3 - bams - craks));
      }
    }
    return List.copyOf(all);
  }

  /**
   * What a tile becomes.
   *
   * @param kind a kind, 0 to 35
   * @return its kind after the exchange
   */
  public int kind(int kind) {
    if (Tile.isSuited(kind)) {
      return Tile.suited(suits[Tile.suitOf(kind)], Tile.numberOf(kind));
    }
    for (int suit = 0; suit < suits.length; suit++) {
      if (Tile.dragonOf(suit) == kind) {
        return Tile.dragonOf(suits[suit]);
      }
    }
    return kind;
  }

  /**
   * The card with its suits and dragons exchanged, wherever a line names them.
   *
   * @param card a card
   * @return the same card where no line names a suit or a dragon; printed texts stay as they are
   */
  public Card card(Card card) {
    List<Family> families = new ArrayList<>();
    for (Family family : card.families()) {
      families.add(new Family(family.name(), family.lines().stream().map(this::line).toList()));
    }
    return new Card(card.name(), card.edition(), families);
  }

  private Line line(Line line) {
    List<HandPattern> patterns = line.patterns().stream().map(this::pattern).toList();
    Set<ConcreteHand> hands = new LinkedHashSet<>();
    Printed printed = line.printed();
    for (HandPattern pattern : patterns) {
      hands.addAll(Expansion.of(pattern, printed.slide(), printed.where(), printed.suits()));
    }
    return new Line(
        line.id(),
        line.family(),
        line.say(),
        printed,
        line.terms(),
        patterns,
        hands.stream()
            .filter(hand -> hand.canBeMade(TileSet.USUAL, line.terms().jokers()))
            .toList());
  }

  private HandPattern pattern(HandPattern pattern) {
    List<Group> groups = new ArrayList<>();
    for (Group group : pattern.groups()) {
      groups.add(new Group(term(group.term()), group.size()));
    }
    return new HandPattern(groups);
  }

  private Term term(Term term) {
    if (term.type() == Term.Type.FIXED) {
      return new Term(term.type(), kind(term.value()), term.suit());
    }
    int suit = term.suit() == 0 ? -1 : Tile.suitLetter(term.suit());
    return suit < 0 ? term : new Term(term.type(), term.value(), Tile.letterOf(suits[suit]));
  }

  /** What becomes of bams, craks and dots, as in {@code bams to craks, craks to bams}. */
  @Override
  public String toString() {
    List<String> names = List.of("bams", "craks", "dots");
    List<String> moves = new ArrayList<>();
    for (int suit = 0; suit < suits.length; suit++) {
      if (suits[suit] != suit) {
        moves.add(names.get(suit) + " to " + names.get(suits[suit]));
      }
    }
    return moves.isEmpty() ? "as written" : String.join(", ", moves);
  }
}
