package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.CardReading;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.tile.TileSet;

/**
 * Draws a practice card from a seed: the same seed, number of lines and name always give the same
 * card.
 *
 * <p>Lines are kept that can be made, share no hand with another line and have neither too few nor
 * too many ways. About one line in six is concealed: all that consist of singles and pairs, and
 * some others. A full card is drawn anew until it has as many hands in all as played ones have.
 */
public final class CardInventor {
  /** Fewest lines of a card. */
  public static final int LEAST_LINES = 10;

  /** Most lines of a card. */
  public static final int MOST_LINES = 70;

  /** A card with at most so many lines is one for beginners. */
  private static final int BEGINNERS_LINES = 20;

  private static final int CONCEALED_PERCENT = 17;
  private static final int MOST_JOKERS_NEEDED = 3;
  private static final int LEAST_WAYS = 3;

  /** Hands in all that a full card has, as hundredths of a hand for each line. */
  private static final int LEAST_HANDS = 1800;

  private static final int MOST_HANDS = 2850;
  private static final int MOST_TRIES = 5_000;

  /** From so many tries on a shape may come again. */
  private static final int ENOUGH_TRIES = 500;

  private final long seed;
  private final int lines;
  private final Level level;

  /**
   * An inventor of one card.
   *
   * @param seed the seed, 0 or more
   * @param lines number of lines, {@link #LEAST_LINES} to {@link #MOST_LINES}; up to 20 give a card
   *     for beginners
   * @throws IllegalArgumentException if the number of lines is out of its range
   */
  public CardInventor(long seed, int lines) {
    if (lines < LEAST_LINES || lines > MOST_LINES) {
      throw new IllegalArgumentException(
          "a card has " + LEAST_LINES + " to " + MOST_LINES + " lines, not " + lines);
    }
    this.seed = seed;
    this.lines = lines;
    this.level = lines <= BEGINNERS_LINES ? Level.BEGINNERS : Level.FULL;
  }

  /**
   * Draws the card.
   *
   * @param name what the card is called
   * @return the card, without faults, and without warnings but that a line takes jokers to be made
   */
  public InventedCard draw(String name) {
    for (int attempt = 0; ; attempt++) {
      List<List<InventedLine>> families = attempt(attempt);
      if (level == Level.BEGINNERS || enoughHands(families)) {
        return finish(name, hide(families));
      }
    }
  }

  private List<List<InventedLine>> attempt(int attempt) {
    Luck luck = new Luck(new RandomStream(new StreamKey(seed, attempt, Purpose.CARD, 0, 0, lines)));
    Set<ConcreteHand> taken = new HashSet<>();
    Set<String> said = new HashSet<>();
    List<List<InventedLine>> families = new ArrayList<>();
    List<Integer> shares = FamilyPlan.shares(lines, level);
    for (int at = 0; at < shares.size(); at++) {
      List<InventedLine> family = new ArrayList<>();
      for (int line = 0; line < shares.get(at); line++) {
        family.add(line(luck, FamilyPlan.ALL.get(at), taken, said));
      }
      families.add(family);
    }
    return families;
  }

  private InventedLine line(
      Luck luck, FamilyPlan family, Set<ConcreteHand> taken, Set<String> said) {
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      LineSketch sketch = family.sketcher().draw(luck, level);
      if (sketch.mirrored()) {
        continue;
      }
      CardReading reading =
          CardFile.json(
              "drawn", CardText.small(family.name(), CardText.line(sketch, "", 1, false)));
      if (reading.faults().isEmpty() && !odd(reading)) {
        Line line = reading.card().lines().get(0);
        if (fits(line, taken) && (said.add(sketch.say()) || tries >= ENOUGH_TRIES)) {
          taken.addAll(line.hands());
          return new InventedLine(sketch, line, family.name().equals(FamilyPlan.COUPLES));
        }
      }
    }
    throw new IllegalStateException("no further line for " + family.name() + " after many tries");
  }

  /** Whether there is a warning, other than that a line takes jokers to be made. */
  private static boolean odd(CardReading reading) {
    return reading.warnings().size()
        > reading.card().lines().stream().filter(Line::crowded).count();
  }

  private static boolean fits(Line line, Set<ConcreteHand> taken) {
    int ways = line.hands().size();
    return ways >= LEAST_WAYS
        && ways <= Pricing.mostWays(line.hands().get(0))
        && line.hands().stream().noneMatch(taken::contains)
        && line.hands().stream()
            .allMatch(hand -> hand.jokersNeeded(TileSet.USUAL) <= MOST_JOKERS_NEEDED);
  }

  private boolean enoughHands(List<List<InventedLine>> families) {
    int hands =
        families.stream().flatMap(List::stream).mapToInt(line -> line.line().hands().size()).sum();
    return 100 * hands >= LEAST_HANDS * lines && 100 * hands <= MOST_HANDS * lines;
  }

  /** Marks further lines concealed, those with most singles and pairs, not two of a family. */
  private List<List<InventedLine>> hide(List<List<InventedLine>> families) {
    long wanted = (lines * CONCEALED_PERCENT + 50) / 100;
    wanted -= families.stream().flatMap(List::stream).filter(InventedLine::concealed).count();
    List<List<InventedLine>> hidden = new ArrayList<>();
    families.forEach(family -> hidden.add(new ArrayList<>(family)));
    List<Integer> order = new ArrayList<>();
    for (int at = 0; at < families.size(); at++) {
      if (families.get(at).stream().anyMatch(line -> !line.concealed())) {
        order.add(at);
      }
    }
    order.sort(Comparator.comparingInt((Integer at) -> -loosest(families.get(at)).loose()));
    for (int at : order.subList(0, (int) Math.max(0, Math.min(wanted, order.size())))) {
      InventedLine loosest = loosest(families.get(at));
      hidden.get(at).set(families.get(at).indexOf(loosest), loosest.hidden());
    }
    return hidden;
  }

  private static InventedLine loosest(List<InventedLine> family) {
    return family.stream()
        .filter(line -> !line.concealed())
        .max(Comparator.comparingInt(InventedLine::loose))
        .orElseThrow();
  }

  private InventedCard finish(String name, List<List<InventedLine>> families) {
    String plain = text(name, families, null);
    Card named = CardFile.json("drawn", plain).orThrow();
    String text = text(name, families, named);
    CardReading reading = CardFile.json("drawn", text);
    if (odd(reading)) {
      throw new IllegalStateException("a drawn card has a warning: " + reading.warnings().get(0));
    }
    return new InventedCard(seed, text, reading.orThrow());
  }

  private String text(String name, List<List<InventedLine>> families, Card named) {
    List<String> sections = new ArrayList<>();
    int index = 0;
    for (int at = 0; at < families.size(); at++) {
      List<String> written = new ArrayList<>();
      for (InventedLine line : families.get(at)) {
        String id = named == null ? "" : named.lines().get(index).id();
        written.add(CardText.line(line.sketch(), id, line.value(), line.concealed()));
        index++;
      }
      if (!written.isEmpty()) {
        sections.add(CardText.family(FamilyPlan.ALL.get(at).name(), written));
      }
    }
    return CardText.whole(name, "invented, seed " + seed, remarks(name), sections);
  }

  private List<String> remarks(String name) {
    String quotable = name.replaceAll("[\\p{Cntrl}\"\\\\]", " ");
    return List.of(
        "A practice card drawn at random; print it and give it away freely.",
        "tallywall card invent --lines "
            + lines
            + " --seed "
            + seed
            + " --name \""
            + quotable
            + "\"",
        "No line is copied from anywhere: any likeness to a printed line is chance.");
  }
}
