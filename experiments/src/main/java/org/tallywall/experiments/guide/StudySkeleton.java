package org.tallywall.experiments.guide;

import java.util.List;
import java.util.stream.Stream;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.html.Resource;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerType;
import tools.jackson.core.io.JsonStringEncoder;

/** A study to begin with, commented line by line and ready to run as it stands. */
public enum StudySkeleton {
  /** Four players at one table. */
  TABLE(
      "table",
      "What happens at a table of these four players?",
      "Which family of the card do they go for, and which one wins?",
      "table.txt"),
  /** Ways of playing, compared. */
  ARMS(
      "arms",
      "Which way of playing does better on the same deals, in the same seats?",
      "Is it right to keep pairs in the Charleston?",
      "arms.txt",
      "rivals.txt",
      "measures.txt"),
  /** One setting at several values. */
  SWEEP(
      "sweep",
      "At how many? One setting of a player, tried at several values on the same deals.",
      "From how many tiles away is it right to call?",
      "sweep.txt",
      "rivals.txt",
      "measures.txt"),
  /** One kind of decision, taken both ways. */
  BRANCH(
      "branch",
      "When is it right to do one thing, and when the other? One decision, played out both ways.",
      "Two exposures on one rack: throw what I do not need, or the safest tile?",
      "branch.txt",
      "measures.txt"),
  /** Everybody against everybody. */
  ROUND_ROBIN(
      "round-robin",
      "Who is stronger than whom? Everybody plays everybody.",
      "Who wins most often when everyone plays everyone?",
      "round-robin.txt");

  private static final String COMMENT = "  //   ";
  private static final int WIDTH = 100;

  private final String kind;
  private final String asks;
  private final String question;
  private final List<String> parts;

  StudySkeleton(String kind, String asks, String question, String... parts) {
    this.kind = kind;
    this.asks = asks;
    this.question = question;
    this.parts = List.of(parts);
  }

  /**
   * The kind of study.
   *
   * @return the field of a study file that asks for its design
   */
  public String kind() {
    return kind;
  }

  /**
   * What such a study asks.
   *
   * @return a sentence or two
   */
  public String asks() {
    return asks;
  }

  /**
   * The study file.
   *
   * @param name what the study is called
   * @param card the path of the card, as it stands in the file
   * @return JSON with comments
   */
  public String text(String name, String card) {
    StringBuilder design = new StringBuilder();
    parts.forEach(part -> design.append(Resource.text(StudySkeleton.class, part)));
    return filled(design.toString(), asks, question, name, card);
  }

  /** A study around a design. */
  static String filled(String design, String asks, String question, String name, String card) {
    return Resource.text(StudySkeleton.class, "study.txt")
        .replace("@DESIGN@\n", design)
        .replace("@PLAYERS@\n", comment(Catalog.standard().types().stream().map(PlayerType::id)))
        .replace("@MEASURES@\n", comment(Measure.names().stream()))
        .replace("@ASKS@", asks)
        .replace("@QUESTION@", question)
        .replace("@NAME@", name)
        .replace("@CARD@", quoted(card));
  }

  /** A text as it stands between the quotes of a JSON string. */
  static String quoted(String text) {
    return new String(JsonStringEncoder.getInstance().quoteAsCharArray(text));
  }

  private static String comment(Stream<String> names) {
    String list = String.join(", ", names.toList());
    return String.join("\n", Words.wrapped(list, COMMENT, WIDTH)) + "\n";
  }
}
