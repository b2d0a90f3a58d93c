package org.tallywall.experiments.gauges.guess;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.experiments.invent.CardInventor;
import org.tallywall.strategies.hand.WinHope;

/**
 * Fits how likely a seat wins, by what its rack is worth after a discard, to games on invented
 * cards, and writes the table; then tries it on further deals of the cards of this project and on
 * cards invented later.
 */
public final class HopeFit {
  private static final int LINES = 54;
  private static final int CARDS = 12;
  private static final int LATER_CARDS = 2;
  private static final double PENALTY = 1;
  private static final int TENTHS = 10;

  private HopeFit() {}

  /**
   * Plays, fits and writes.
   *
   * @param args the table, the seed, how many games of each kind on each card, the kinds of players
   *     with commas between them, and the files of the cards to try it on
   * @throws IOException if a card cannot be read or the table not be written
   */
  public static void main(String[] args) throws IOException {
    long seed = Long.parseLong(args[1]);
    int games = Integer.parseInt(args[2]);
    List<String> kinds = List.of(args[3].split(","));
    ConditionalLogit model = new ConditionalLogit(WinHope.names().size());
    for (int card = 0; card < CARDS; card++) {
      for (String kind : kinds) {
        for (Kept one : new KeptRacks(invented(seed + card), kind, seed).play(games)) {
          model.addYesOrNo(one.seen(), one.won());
        }
      }
    }
    double[] weights = model.fit(PENALTY);
    write(Path.of(args[0]), args, weights);
    for (String kind : kinds) {
      for (String file : Arrays.asList(args).subList(4, args.length)) {
        Path path = Path.of(file);
        ConcreteHands card = new ConcreteHands(CardFile.read(path).orThrow());
        tryOut(path.getFileName() + ", four " + kind, card, kind, seed, games, weights);
      }
      for (int card = 0; card < LATER_CARDS; card++) {
        long later = seed + CARDS + card;
        String name = "invented with seed " + later + ", four " + kind;
        tryOut(name, invented(later), kind, seed, games, weights);
      }
    }
  }

  private static ConcreteHands invented(long seed) {
    return new ConcreteHands(new CardInventor(seed, LINES).draw("invented " + seed).card());
  }

  private static void write(Path table, String[] args, double[] weights) throws IOException {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "# How likely a seat wins, by what its rack is worth after a discard (WinHope).%n"
                + "# Written by strategies/fit-hopes %s %s: four %s on %d invented cards of %d lines,"
                + " seeds from %s.%n",
            args[1],
            args[2],
            args[3],
            CARDS,
            LINES,
            args[1]));
    for (int at = 0; at < weights.length; at++) {
      text.append(String.format(Locale.ROOT, "%s\t%.4f\n", WinHope.names().get(at), weights[at]));
    }
    Files.writeString(table, text.toString().replace("\r", ""), StandardCharsets.UTF_8);
  }

  /** By tenths of what is said: how often it is said, what was said and what happened, in 100. */
  private static void tryOut(
      String name, ConcreteHands card, String kind, long seed, int games, double[] weights) {
    double[] said = new double[TENTHS];
    int[] won = new int[TENTHS];
    int[] all = new int[TENTHS];
    for (Kept one : new KeptRacks(card, kind, seed + 1).play(games)) {
      double sum = 0;
      for (int at = 0; at < weights.length; at++) {
        sum += weights[at] * one.seen()[at];
      }
      double chance = 1 / (1 + StrictMath.exp(-sum));
      int tenth = Math.min(TENTHS - 1, (int) (chance * TENTHS));
      said[tenth] += chance;
      won[tenth] += one.won() ? 1 : 0;
      all[tenth]++;
    }
    List<String> parts = new ArrayList<>();
    for (int tenth = 0; tenth < TENTHS; tenth++) {
      if (all[tenth] > 0) {
        parts.add(
            String.format(
                Locale.ROOT,
                "%.1f %.1f (%d)",
                100 * said[tenth] / all[tenth],
                100.0 * won[tenth] / all[tenth],
                all[tenth]));
      }
    }
    System.out.println(name + ": " + String.join("; ", parts));
  }
}
