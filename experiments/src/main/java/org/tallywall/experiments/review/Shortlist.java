package org.tallywall.experiments.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.tallywall.core.play.Player;
import org.tallywall.core.sheet.Asking;
import org.tallywall.core.sheet.Choice;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.strategies.habit.Judging;

/**
 * The choices that a sound person might consider, the asked player's own first: what several kinds
 * of players would do, and what the judgment of one of them finds next best. Choices that somebody
 * names come on top of these.
 */
public final class Shortlist {
  /** Choices looked at unless somebody names more. */
  static final int MOST = 8;

  /** Choices that somebody may name, at most; those of a sheet beyond it are left out. */
  public static final int MOST_NAMED = 20;

  private final PositionSheet sheet;
  private final Seated asked;
  private final List<Seated> advisers;
  private final UnaryOperator<Player> watched;
  private final Lawful lawful;
  private final Map<List<Move>, List<String>> found = new LinkedHashMap<>();

  /**
   * A list of nothing yet.
   *
   * @param sheet the position
   * @param asked whose choice comes first
   * @param advisers other players whose choices are looked at, too; the first that can tell how it
   *     judges is asked for more where the asked one cannot
   * @param watched puts somebody in front of a player who watches it being asked
   */
  public Shortlist(
      PositionSheet sheet, Seated asked, List<Seated> advisers, UnaryOperator<Player> watched) {
    this.sheet = sheet;
    this.asked = asked;
    this.advisers = List.copyOf(advisers);
    this.watched = watched;
    this.lawful = new Lawful(sheet);
  }

  /**
   * The choices.
   *
   * @param named those that somebody names
   * @return at least one, the asked player's own first
   * @throws UnlawfulChoiceException if one that is named is not allowed, or leaves something open
   */
  public List<Considered> choices(List<Choice> named) {
    found.clear();
    answer(asked);
    named.forEach(choice -> add(named(choice), Considered.YOU));
    written(sheet.expect());
    written(sheet.never());
    int more = Math.max(0, found.size() - 1);
    advisers.forEach(this::answer);
    for (List<Move> moves : judged()) {
      if (found.size() < MOST + more) {
        add(moves, "");
      }
    }
    List<Considered> choices = new ArrayList<>();
    found.forEach((moves, by) -> choices.add(new Considered(moves, by)));
    return choices;
  }

  /**
   * Looks whether choices may be made.
   *
   * @param named those that somebody names
   * @throws UnlawfulChoiceException if one is not allowed, or leaves something open
   */
  public void require(List<Choice> named) {
    named.forEach(this::named);
  }

  private void answer(Seated player) {
    List<Move> answer =
        Asking.put(sheet, watched.apply(player.maker().get()), 0, (view, move) -> {});
    add(begun(answer), player.name());
  }

  /** What is thrown after a claim is left to whoever plays on. */
  private static List<Move> begun(List<Move> answer) {
    return answer.get(0) instanceof Move.Claim ? answer.subList(0, 1) : answer;
  }

  private void add(List<Move> moves, String by) {
    List<String> names = found.computeIfAbsent(List.copyOf(moves), any -> new ArrayList<>());
    if (!by.isEmpty() && !names.contains(by)) {
      names.add(by);
    }
  }

  private List<Move> named(Choice choice) {
    List<Move> moves =
        choice
            .moves()
            .orElseThrow(
                () ->
                    new UnlawfulChoiceException(
                        choice.text(),
                        "it leaves something open; name each tile, seat, and number"));
    lawful
        .fault(moves, watched.apply(asked.maker().get()))
        .ifPresent(
            fault -> {
              throw new UnlawfulChoiceException(choice.text(), fault);
            });
    return moves;
  }

  /** What the sheet expects or rules out, where it is one whole choice and allowed. */
  private void written(List<Choice> choices) {
    for (Choice choice : choices) {
      choice
          .moves()
          .filter(moves -> found.size() <= MOST_NAMED)
          .filter(moves -> lawful.fault(moves, watched.apply(asked.maker().get())).isEmpty())
          .ifPresent(moves -> add(begun(moves), Considered.SHEET));
    }
  }

  private List<List<Move>> judged() {
    Player judge = asked.maker().get();
    for (Seated adviser : advisers) {
      judge = judge instanceof Judging ? judge : adviser.maker().get();
    }
    Moment moment = sheet.moment();
    if (moment instanceof Moment.Turn) {
      return new TurnChoices(sheet.view(), watched.apply(asked.maker().get()), sheet).list(judge);
    } else if (moment instanceof Moment.Offer) {
      return OfferChoices.list(sheet.view());
    }
    return PassChoices.list(sheet.view(), moment, judge);
  }
}
