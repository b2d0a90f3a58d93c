package org.tallywall.experiments.guide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.Family;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.studies.PreferredFamilies;
import org.tallywall.experiments.study.Bounds;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.html.Resource;

/** A study of the sections of one card: a way of playing for each family, ready to run. */
public final class SectionsStudy {
  /** What is typed for it. */
  public static final String KIND = PreferredFamilies.KIND_OF_STUDY;

  /** What it asks. */
  public static final String ASKS =
      "Which section is worth pursuing? A study with \"arms\", one for each family of your card.";

  private static final String QUESTION = "Which section of the card is worth looking at first?";
  private static final String NAME = "[A-Za-z0-9][A-Za-z0-9 _.-]{0,51}";

  private SectionsStudy() {}

  /**
   * The study file.
   *
   * @param name what the study is called
   * @param path the path of the card, as it stands in the file
   * @param card the card
   * @return JSON with comments
   * @throws WrongInputException if the card has more families than a study takes ways of playing
   */
  public static String text(String name, String path, Card card) {
    List<String> families = card.families().stream().map(Family::name).toList();
    if (families.size() >= Bounds.MOST_WAYS) {
      throw new WrongInputException(
          "the card has %s families; a study takes %s at most"
              .formatted(Words.grouped(families.size()), Bounds.MOST_WAYS - 1));
    }
    String arms =
        arms(families).entrySet().stream()
            .map(arm -> arm(arm.getKey(), arm.getValue()))
            .collect(Collectors.joining(",\n"));
    // The names come last, for they may hold anything.
    return StudySkeleton.filled(
            Resource.text(SectionsStudy.class, "sections.txt")
                + Resource.text(SectionsStudy.class, "rivals.txt")
                + Resource.text(SectionsStudy.class, "measures.txt"),
            ASKS,
            QUESTION,
            name,
            path)
        .replace("@SECTIONS@", arms);
  }

  /**
   * Each family by the name of its way of playing; one that cannot be part of a name has a number.
   */
  private static Map<String, String> arms(List<String> families) {
    Map<String, String> arms = new LinkedHashMap<>();
    for (int at = 0; at < families.size(); at++) {
      String family = families.get(at);
      String name = family.matches(NAME) ? family : "family " + (at + 1);
      while (arms.containsKey("pursue " + name)) {
        name = name + "-";
      }
      arms.put("pursue " + name, family);
    }
    return arms;
  }

  private static String arm(String name, String family) {
    return "    \"%s\": { \"player\": \"watchful\", \"%s\": \"%s\" }"
        .formatted(name, PreferredFamilies.SETTING, StudySkeleton.quoted(family));
  }
}
