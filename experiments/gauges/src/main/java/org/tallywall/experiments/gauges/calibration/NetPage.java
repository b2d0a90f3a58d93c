package org.tallywall.experiments.gauges.calibration;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tallywall.experiments.gauges.MarkedPage;
import org.tallywall.experiments.gauges.Paragraph;

/**
 * Writes what stands first in {@code strategies/CALIBRATION.md}: what its tables come to, and how
 * well the same chances fit several cards, on each of which games are played for it.
 */
public final class NetPage {
  private NetPage() {}

  /**
   * Plays and writes.
   *
   * @param args the page, with its tables; the seed; how many games of each kind on each card; and
   *     the files of the cards
   * @throws IOException if the page cannot be read or written
   */
  public static void main(String[] args) throws IOException {
    Path page = Path.of(args[0]);
    MarkedPage marked = new MarkedPage(page, "net");
    String tables = Files.readString(page, StandardCharsets.UTF_8);
    long seed = Long.parseLong(args[1]);
    int games = Integer.parseInt(args[2]);
    List<Path> files = new ArrayList<>();
    for (int at = 3; at < args.length; at++) {
      files.add(Path.of(args[at]));
    }
    List<OneCard> cards =
        files.parallelStream()
            .map(file -> OneCard.play(CalibrationPage.card(file), seed, games))
            .toList();
    marked.write(text(tables, new FourCards(cards), seed, games));
  }

  private static String text(String tables, FourCards cards, long seed, int games) {
    StringBuilder text = new StringBuilder(comesTo(tables));
    text.append(Paragraph.of(cards.line()));
    text.append("## On several cards\n\n");
    text.append(
        Paragraph.of(
            String.format(
                Locale.ROOT,
                "What was said less what happened, in 100: above 0 too much was said. Seed %d,"
                    + " deals 0 to %d on each card; the hands of one `reckoner` among players that"
                    + " never declare, all else of four `reckoner`, risks from 2 in 100 up. The"
                    + " chances of risks were fitted to the first of these cards, those by all that"
                    + " can be seen to the first three, those by what the rest of the rack is worth"
                    + " to none of them.",
                seed,
                games - 1)));
    return text.append(cards.tables()).toString();
  }

  /** What the tables of the page come to. */
  static String comesTo(String tables) {
    StringBuilder text = new StringBuilder("## What it comes to\n\n");
    text.append(
        Paragraph.of(
            "By how much what is said is too high or too low, in 100, by the tables below, for what"
                + " is said between two numbers; \"right as far as can be told\" where the range of"
                + " what happened holds what was said. What four players say of their own hands"
                + " leaves out by intent that somebody else may win first, and is not judged"
                + " here."));
    NetResult.lines(tables).forEach(line -> text.append(Paragraph.item(line)));
    return text.append('\n').toString();
  }
}
