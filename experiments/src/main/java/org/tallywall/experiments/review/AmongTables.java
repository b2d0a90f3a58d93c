package org.tallywall.experiments.review;

import java.util.List;

/**
 * One position reviewed at several tables, with the same choices.
 *
 * @param names what readers call the tables, in their order
 * @param reviews a review for each
 */
public record AmongTables(List<String> names, List<Review> reviews) {
  /**
   * Copies the lists.
   *
   * @param names what readers call the tables
   * @param reviews a review for each
   * @throws IllegalArgumentException if there are not as many of one as of the other
   */
  public AmongTables {
    names = List.copyOf(names);
    reviews = List.copyOf(reviews);
    if (names.size() != reviews.size() || names.isEmpty()) {
      throw new IllegalArgumentException("each table has a name and a review");
    }
  }

  /**
   * A choice in a review.
   *
   * @param review the review
   * @param choice one of its choices
   * @return what came of it there
   */
  static ChoiceResult of(Review review, Considered choice) {
    return review.choices().stream()
        .filter(one -> one.choice().equals(choice))
        .findFirst()
        .orElseThrow();
  }

  /**
   * The choices that no table speaks against: clearly behind at none of them.
   *
   * @return their words, in the order of the first table; empty where the verdict depends on who
   *     plays
   */
  List<String> goodEverywhere() {
    return reviews.get(0).choices().stream()
        .filter(
            one ->
                reviews.stream()
                    .allMatch(review -> of(review, one.choice()).verdict() != Verdict.BEHIND))
        .map(one -> one.choice().text())
        .toList();
  }
}
