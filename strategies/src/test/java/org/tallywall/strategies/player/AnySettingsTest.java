package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.Card;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.Replay;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.setting.Setting;

/**
 * Players with settings drawn from their ranges by lot: whatever is set, they answer legally, and
 * by the view and the numbers of the question alone. Four others at each deal.
 */
@Tag("long")
class AnySettingsTest {
  private static final long SEED = 11_25L;
  private static final int DEALS = 60;
  private static final Pattern RANGE = Pattern.compile("a (whole )?number from (\\S+) to (\\S+)");

  /** Half of the settings of a watchful player stay as they are. */
  private static PlayerSpec drawn(int deal, int seat) {
    RandomStream lot = new RandomStream(new StreamKey(SEED, deal, Purpose.DECISION, seat, 0, 0));
    PlayerType type = Catalog.standard().type("watchful").orElseThrow();
    Map<String, Object> changed = new LinkedHashMap<>();
    for (Setting<?> setting : type.settings()) {
      if (lot.below(2) == 0) {
        changed.put(setting.name(), value(setting, lot));
      }
    }
    return new PlayerSpec(type, changed);
  }

  private static Object value(Setting<?> setting, RandomStream lot) {
    if (setting.standard() instanceof Boolean) {
      return lot.below(2) == 0;
    }
    if (setting.standard() instanceof String) {
      List<String> words = setting.words().isEmpty() ? names(setting) : setting.words();
      return words.get(lot.below(words.size()));
    }
    BigDecimal tenth = BigDecimal.valueOf(lot.below(11)).movePointLeft(1);
    Matcher range = RANGE.matcher(setting.range());
    assertThat(range.matches()).as(setting.range()).isTrue();
    BigDecimal least = new BigDecimal(range.group(2));
    BigDecimal most = new BigDecimal(range.group(3));
    BigDecimal value = least.add(most.subtract(least).multiply(tenth));
    return range.group(1) == null ? value : value.setScale(0, RoundingMode.HALF_UP);
  }

  /** What a setting may name on the card, and nothing. */
  private static List<String> names(Setting<?> setting) {
    Card card = TestTable.HANDS.card();
    List<String> names = new ArrayList<>(List.of(""));
    card.families().forEach(family -> names.add(family.name()));
    card.lines().forEach(line -> names.add(line.id()));
    names.removeIf(name -> setting.unfit(name, card).isPresent());
    assertThat(names).as(setting.name()).hasSizeGreaterThan(1);
    return names;
  }

  @Test
  void answers_areLegalAndDependOnTheViewAlone_whateverIsSet() {
    for (int deal = 0; deal < DEALS; deal++) {
      List<ThreeTimesAsked> seats = new ArrayList<>();
      List<PlayerSpec> specs = new ArrayList<>();
      for (int seat = 0; seat < 4; seat++) {
        PlayerSpec spec = drawn(deal, seat);
        specs.add(spec);
        seats.add(new ThreeTimesAsked(TestTable.SEED, spec::make));
        seats.get(seat).deal(deal);
      }
      GameRecord game = TestTable.play(deal, seats);
      assertThat(Replay.check(TestTable.HANDS, game)).as("deal %d: %s", deal, specs).isEmpty();
      assertThat(seats).allSatisfy(seat -> assertThat(seat.questions).isPositive());
    }
  }
}
