package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.tile.Tile;

/** The expansion of a line gives exactly the hands that plain trial of every reading gives. */
@Tag("one-jdk")
class ExpansionAgainstPlainTest {
  private static final int LINES = 1_500;

  @Test
  void hands_ofManyDrawnLines_areThoseOfPlainTrial() {
    RandomLines lines = new RandomLines(3_000);
    int many = 0;
    int none = 0;
    for (int at = 0; at < LINES; at++) {
      RandomLines.Drawn drawn = lines.next();
      Set<String> plain =
          PlainExpander.hands(
              drawn.tiles(), drawn.slide(), drawn.where(), drawn.orOne(), drawn.jokers());
      CardReading reading = CardTexts.read("{ " + drawn.fields() + ", \"value\": 25 }");
      if (plain.isEmpty()) {
        assertThat(CardTexts.text(reading.faults())).contains("no hand of this line can be made");
        none++;
      } else {
        assertThat(CardTexts.text(reading.faults())).as(drawn.fields()).isEmpty();
        List<ConcreteHand> hands = reading.card().lines().get(0).hands();
        assertThat(hands).as(drawn.fields()).hasSize(plain.size());
        assertThat(readings(hands)).as(drawn.fields()).isEqualTo(plain);
        many += hands.size() > 20 ? 1 : 0;
      }
    }
    assertThat(many).as("lines of more than twenty hands").isGreaterThan(LINES / 10);
    assertThat(none).as("lines that nobody can make").isBetween(LINES / 100, LINES / 2);
  }

  private static Set<String> readings(List<ConcreteHand> hands) {
    Set<String> readings = new TreeSet<>();
    for (ConcreteHand hand : hands) {
      List<String> groups = new ArrayList<>();
      for (int group = 0; group < hand.groups(); group++) {
        groups.add(hand.groupSize(group) + "x" + Tile.symbol(hand.groupKind(group)));
      }
      List<String> loose = new ArrayList<>();
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        loose.addAll(Collections.nCopies(hand.loose(kind), Tile.symbol(kind)));
      }
      Collections.sort(groups);
      Collections.sort(loose);
      readings.add(groups + " " + loose);
    }
    return readings;
  }
}
