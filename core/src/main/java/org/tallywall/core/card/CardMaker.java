package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Place;
import org.tallywall.core.text.Shown;

/** Checks a typed card as a whole: ids, lines, and hands that several lines share. */
final class CardMaker {
  private CardMaker() {}

  /**
   * Makes a card.
   *
   * @param draft the card as typed
   * @param faults takes faults and warnings
   * @return the card; incomplete where faults were noted
   */
  static Card make(CardDraft draft, Faults faults) {
    if (draft.lines().isEmpty() && !faults.any()) {
      faults.fault(Place.FILE, "the card has no lines; write at least one");
    }
    Map<String, List<Line>> byFamily = new HashMap<>();
    List<Line> lines = new ArrayList<>();
    List<Place> places = new ArrayList<>();
    CardRoom room = new CardRoom(faults);
    for (LineDraft typed : draft.lines()) {
      if (room.full()) {
        break;
      }
      Line line = LineMaker.make(typed, room, faults);
      if (line != null) {
        byFamily.computeIfAbsent(line.family(), family -> new ArrayList<>()).add(line);
        lines.add(line);
        places.add(typed.place);
      }
    }
    warnOfSharedHands(lines, places, faults);
    List<Family> families = new ArrayList<>();
    for (String family : draft.families()) {
      families.add(new Family(family, byFamily.getOrDefault(family, List.of())));
    }
    return new Card(draft.name(), draft.edition(), families);
  }

  private static void warnOfSharedHands(List<Line> lines, List<Place> places, Faults faults) {
    Map<ConcreteHand, Integer> first = new HashMap<>();
    Map<ConcreteHand, Integer> times = new HashMap<>();
    for (int at = 0; at < lines.size(); at++) {
      Set<Integer> named = new HashSet<>();
      for (ConcreteHand hand : lines.get(at).hands()) {
        Integer other = first.putIfAbsent(hand, at);
        times.merge(hand, 1, Integer::sum);
        if (other != null && named.add(other)) {
          faults.warn(
              places.get(at),
              lines.get(at).id(),
              "shares a hand with " + Shown.word(lines.get(other).id()) + ": " + hand);
        }
      }
    }
    for (int at = 0; at < lines.size(); at++) {
      if (lines.get(at).hands().stream().allMatch(hand -> times.get(hand) > 1)) {
        faults.warn(
            places.get(at),
            lines.get(at).id(),
            "has no hand of its own: each of its hands is in another line too");
      }
    }
  }
}
