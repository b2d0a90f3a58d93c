package example.suitkeeper;

import java.util.List;
import org.tallywall.strategies.catalog.PlayerSource;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.habit.Setting;

/** Lists the players of this jar: with a name, a description and settings. */
public final class SuitKeepers implements PlayerSource {
  private static final String THIN = "passes.thin-at-most";
  private static final String PAIRS = "passes.keep-pairs";

  /** The list. */
  public SuitKeepers() {}

  @Override
  public List<PlayerType> players() {
    return List.of(
        new PlayerType(
            "suit-keeper",
            "heads for the nearest line, but passes away the suit of which it holds fewest tiles",
            List.of(
                Setting.number(
                    THIN,
                    "4",
                    "0",
                    "6",
                    "of how many tiles at most a suit is passed away (\"get rid of one suit\")"),
                Setting.flag(PAIRS, true, "keeps two of a kind even of that suit")),
            values -> new SuitKeeper(values.whole(THIN), values.flag(PAIRS))));
  }
}
