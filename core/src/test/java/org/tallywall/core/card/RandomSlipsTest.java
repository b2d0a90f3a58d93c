package org.tallywall.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;

/** Whatever one letter of a line is changed to: other hands are other words or another number. */
class RandomSlipsTest {
  private static final int LINES = 2_000;
  private static final String LETTERS = "123456789nmkDxyzbcdNEWSRGF0uv ";

  private final RandomStream random =
      new RandomStream(new StreamKey(4_000, 0, Purpose.RESAMPLING, 0, 0, 0));

  @Test
  void oneLetterChanged_givesTheSameHandsOrIsSeen() {
    RandomLines lines = new RandomLines(4_000);
    int seen = 0;
    for (int at = 0; at < LINES; at++) {
      RandomLines.Drawn drawn = lines.next();
      Card right = CardTexts.read("{ " + drawn.fields() + ", \"value\": 25 }").card();
      Card wrong = CardTexts.read("{ " + slipped(drawn).fields() + ", \"value\": 25 }").card();
      if (right != null && wrong != null) {
        boolean differ = !CardDifference.between(right, wrong).isEmpty();
        if (differ) {
          assertThat(proof(right)).as(drawn.fields()).isNotEqualTo(proof(wrong));
          seen++;
        }
      }
    }
    assertThat(seen).isGreaterThan(LINES / 10);
  }

  private static String proof(Card card) {
    Line line = card.lines().get(0);
    return CardSentence.of(line) + " " + line.hands().size();
  }

  private RandomLines.Drawn slipped(RandomLines.Drawn drawn) {
    StringBuilder tiles = new StringBuilder(drawn.tiles());
    int at = random.below(tiles.length());
    if (random.below(4) == 0) {
      tiles.insert(at, ' ');
    } else {
      tiles.setCharAt(at, LETTERS.charAt(random.below(LETTERS.length())));
    }
    return new RandomLines.Drawn(
        tiles.toString(), drawn.slide(), drawn.where(), drawn.orOne(), drawn.jokers());
  }
}
