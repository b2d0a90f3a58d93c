package org.tallywall.strategies.habit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.Asking;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Node;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Two positions for one value of one setting: in the first the setting changes the choice, in the
 * second it does not. They stand in {@code positions/….txt}, one after the other, with the choices
 * without and with the setting; an empty line ends each. The card is that of {@link TestTable}.
 *
 * <p>A watchful player has the settings of {@code positions/watchful-settings.txt}, so that a
 * position shows what a setting does whatever the others usually are.
 *
 * @param file where it stands
 * @param setting the setting's name
 * @param value the value it is given, as in JSON
 * @param also other settings that both players have, as in JSON, or empty
 * @param player the kind of player
 * @param without the choice without the setting, in the first position
 * @param with the choice with it
 * @param changes the first position
 * @param kept the choice in the second position, without and with it
 * @param keeps the second position
 */
record HabitPosition(
    String file,
    String setting,
    String value,
    String also,
    String player,
    String without,
    String with,
    String changes,
    String kept,
    String keeps) {
  private static final TableSetup SETUP = new TableSetup(TestTable.HANDS, TableRules.STANDARD);
  private static final long SEED = 4;

  /** All positions of some files. */
  static List<HabitPosition> read(List<String> files) {
    List<HabitPosition> all = new ArrayList<>();
    for (String file : files) {
      for (String block : text(file).split("\n\n+")) {
        all.add(new Block(file, block).read());
      }
    }
    return all;
  }

  private static String text(String file) {
    try (InputStream in = HabitPosition.class.getResourceAsStream("/positions/" + file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What the player does in a position, first of all. */
  String choice(String sheet, boolean on) {
    PositionSheet position = PositionSheet.of(file + ": " + setting, sheet, SETUP);
    return Asking.put(position, made(on), SEED, (view, move) -> {}).get(0).text();
  }

  private Player made(boolean on) {
    Map<String, String> all = new TreeMap<>();
    if (player.equals("watchful")) {
      all.putAll(settings());
    }
    if (on) {
      all.put(setting, value);
    }
    StringBuilder settings = new StringBuilder(also.isEmpty() ? "" : ", " + also);
    all.forEach((name, set) -> settings.append(", \"%s\": %s".formatted(name, set)));
    Faults faults = new Faults();
    Node node =
        LocatedJson.read("{\"p\": {\"player\": \"" + player + "\"" + settings + "}}", faults);
    PlayerSpec spec =
        faults.any()
            ? null
            : Catalog.standard().read(((Node.Fields) node.value()).values().get("p"), faults);
    if (spec == null) {
      throw new IllegalArgumentException(file + ": " + setting + ": " + faults.faults());
    }
    return spec.make();
  }

  private static Map<String, String> settings() {
    return text("watchful-settings.txt")
        .lines()
        .map(line -> line.split(" "))
        .collect(Collectors.toMap(words -> words[0], words -> words[1]));
  }

  @Override
  public String toString() {
    return setting + " " + value;
  }

  /** One entry of a file, read from its first words. */
  private static final class Block {
    private final String file;
    private final List<String> lines;
    private String also = "";
    private String player = "reckoner";
    private int at;

    Block(String file, String text) {
      this.file = file;
      this.lines = List.of(text.split("\n"));
    }

    HabitPosition read() {
      String[] set = rest("set").split(" ", 2);
      while (!lines.get(at).startsWith("changes")) {
        if (lines.get(at).startsWith("also")) {
          also = rest("also");
        } else {
          player = rest("player");
        }
      }
      String[] change = rest("changes").split(" to ");
      String first = sheet();
      String kept = rest("keeps");
      return new HabitPosition(
          file, set[0], set[1], also, player, change[0], change[1], first, kept, sheet());
    }

    private String rest(String word) {
      String line = lines.get(at++);
      if (!line.startsWith(word + " ")) {
        throw new IllegalArgumentException(file + ": \"" + line + "\" where " + word + " belongs");
      }
      return line.substring(word.length()).strip();
    }

    private String sheet() {
      StringBuilder sheet = new StringBuilder();
      while (at < lines.size() && !lines.get(at).startsWith("keeps ")) {
        sheet.append(lines.get(at++)).append('\n');
      }
      return sheet.toString();
    }
  }
}
