package org.tallywall.experiments.studies;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tallywall.core.card.Card;
import org.tallywall.core.text.Shown;
import org.tallywall.experiments.words.Words;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.habit.Preference;
import org.tallywall.strategies.setting.Setting;

/** The families of the card that the players of a study prefer, and a card that has others. */
public final class PreferredFamilies {
  /** The setting that names one. */
  public static final String SETTING = Preference.FAMILY.name();

  /** The kind of study that asks about the families of any card. */
  public static final String KIND_OF_STUDY = "sections";

  private static final int FEW = 3;

  private final Set<String> named = new LinkedHashSet<>();
  private final Set<String> missing = new LinkedHashSet<>();
  private final Card card;

  PreferredFamilies(List<PlayerSpec> players, Card card) {
    this.card = card;
    for (PlayerSpec player : players) {
      for (Setting<?> setting : player.type().settings()) {
        if (setting.name().equals(SETTING) && player.value(setting) instanceof String family) {
          add(family, setting.unfit(family, card).isPresent());
        }
      }
    }
  }

  private void add(String family, boolean unfit) {
    if (!family.isEmpty()) {
      named.add(family);
    }
    if (unfit) {
      missing.add(family);
    }
  }

  /**
   * What to say once where a study is about the families of another card.
   *
   * @param file the card's file
   * @param given whether the card was given in place of the study's own
   * @return a sentence with the command that makes such a study of this card; empty where all
   *     families are there, or where a name or two may be mistyped
   */
  Optional<String> ofAnotherCard(Path file, boolean given) {
    boolean several = missing.size() > 1;
    if (!several || (!given && missing.size() < named.size())) {
      return Optional.empty();
    }
    String shown =
        String.join(
            ", ", missing.stream().limit(FEW).map(one -> "\"" + Shown.word(one) + "\"").toList());
    int more = missing.size() - FEW;
    return Optional.of(
        "this study names families that the card \"%s\" does not have (%s%s); for a study of the sections of this card: tallywall study new %s --card %s --out my-%s.json"
            .formatted(
                Shown.word(card.name()),
                shown,
                more > 0 ? " and " + more + " more" : "",
                KIND_OF_STUDY,
                Words.typed(file.toString()),
                KIND_OF_STUDY));
  }

  /**
   * What keeps players from a card.
   *
   * @param players the players of a study
   * @param card the card
   * @param file the card's file
   * @param given whether the card was given in place of the study's own
   * @return the faults, each once; those of families together where the study is about another
   *     card's
   */
  static List<String> unfit(List<PlayerSpec> players, Card card, Path file, boolean given) {
    Stream<String> each =
        players.stream().map(player -> player.unfit(card)).flatMap(Optional::stream).distinct();
    Optional<String> together = new PreferredFamilies(players, card).ofAnotherCard(file, given);
    return together.isEmpty()
        ? each.toList()
        : Stream.concat(together.stream(), each.filter(fault -> !fault.contains(SETTING))).toList();
  }
}
