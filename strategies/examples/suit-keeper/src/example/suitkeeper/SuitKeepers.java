package example.suitkeeper;

import java.util.List;
import org.tallywall.strategies.catalog.PlayerSource;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.setting.Setting;

/** Lists the players of this jar: with a name, a description and settings. */
public final class SuitKeepers implements PlayerSource {
  private static final Setting<Integer> THIN =
      Setting.whole("passes.thin-at-most")
          .from(0)
          .to(6)
          .usual(4)
          .says(
              "passes away a suit of which it holds at most this many tiles (\"get rid of one "
                  + "suit\")");

  private static final Setting<Boolean> PAIRS =
      Setting.onOff("passes.keep-pairs").usual(true).says("keeps two of a kind even of that suit");

  /** The list. */
  public SuitKeepers() {}

  @Override
  public List<PlayerType> players() {
    return List.of(
        new PlayerType(
            "suit-keeper",
            "heads for the nearest line, but passes away the suit of which it holds fewest tiles",
            List.of(THIN, PAIRS),
            values -> new SuitKeeper(values.get(THIN), values.get(PAIRS))));
  }
}
