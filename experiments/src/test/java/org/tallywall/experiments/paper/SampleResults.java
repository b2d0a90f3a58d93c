package org.tallywall.experiments.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Invented results folders; their figures mean nothing and only look like results. */
public final class SampleResults {
  static final String VERSION = "0.1.0";

  private static final String MANIFEST =
      """
      { "tallywall": "0.1.0", "stream-version": 1, "study": "STUDY",
        "study-digest": "sha256:11", "card": "CARD", "card-digest": "sha256:22",
        "rules-digest": "sha256:33", "seed": 7, "deals": 20000, "games": 100000, "faults": 0 }
      """;

  private static final String DIFFERENCES =
      "arm,baseline,measure,role,level,baseline-level,difference,difference-low,difference-high,"
          + "method,p,p-holm,correlation,gain,discordant,more,fewer,deals,detectable,stop\n";

  private static final String WINS =
      "arm,seat,player,deals,games,wins,win-rate,win-rate-low,win-rate-high,win-rate-method,points,"
          + "points-low,points-high,points-method,won-on-own-draw,won-on-discard,"
          + "threw-the-winning-tile,only-paid,wall-game,void,won-after-redeeming,won-jokerless,"
          + "one-away-reached,wall-at-win,jokers-at-win,exposures,exchanges\n";

  private SampleResults() {}

  /** Two ways of playing against a baseline: one clearly better, one that could not be told. */
  public static Path arms(Path folder) {
    start(folder, "defense-switch", "Saltmarsh Quay practice card");
    write(
        folder,
        "study.json",
        """
        { "study": "defense-switch",
          "question": "Does holding back help once somebody shows two exposures?",
          "card": "card.json", "rules": { "wall.cold": "NO_CLAIM" },
          "arms": { "never": "reckoner", "hold-back": "watchful", "too-late": "watchful" },
          "baseline": "never", "primary": "win-rate", "secondary": ["wall-games"],
          "deals": 20000, "confidence": 0.95, "records": 0 }
        """);
    List<String> rows = new ArrayList<>();
    rows.add(
        difference(
            "hold-back,never,win-rate,primary,0.235,0.225,0.0100630619,0.0040127832,"
                + "0.0161221682,t over deals,0.0011,0.0022,0.71,3.4,5290,2750,2540"));
    rows.add(
        difference(
            "too-late,never,win-rate,primary,0.226,0.225,0.0011,-0.0031,"
                + "0.0052,t over deals,0.61,0.61,0.93,13.8,1290,650,640"));
    rows.add(
        difference(
            "hold-back,never,wall-games,secondary,0.153,0.103,0.0502,0.0431,"
                + "0.0573,t over deals,0.00001,0.00003,0.6,2.5,4000,2600,1400"));
    rows.add(
        difference(
            "hold-back,never,threw-the-winning-tile,secondary,0.091,0.156,-0.065,-0.072,"
                + "-0.058,t over deals,0.00001,0.00003,0.6,2.5,4000,1400,2600"));
    rows.add(
        difference(
            "hold-back,never,one-away-reached,exploratory,0.41,0.45,-0.04,-0.047,-0.033,"
                + "t over deals,,,0.6,2.5,4000,1400,2600"));
    rows.add(
        difference(
            "too-late,never,threw-the-winning-tile,secondary,0.16,0.156,0.004,0.0005,0.0075,"
                + "t over deals,0.03,0.12,0.9,10,900,500,400"));
    write(folder, "differences.csv", DIFFERENCES + String.join("", rows));
    write(
        folder,
        "win-rates.csv",
        WINS
            + wins("never", 18000, 0.225, 6512, 11488, 12480, 41296, 8224)
            + wins("hold-back", 18800, 0.235, 6320, 12480, 7280, 41680, 12240)
            + wins("too-late", 18080, 0.226, 6500, 11580, 12400, 41200, 8320));
    return folder;
  }

  /** Five values of a setting. */
  public static Path sweep(Path folder) {
    start(folder, "how-far", "Saltmarsh Quay practice card");
    write(
        folder,
        "study.json",
        """
        { "study": "how-far", "question": "From how many tiles away is it time to hold back?",
          "card": "card.json",
          "sweep": { "player": "watchful", "setting": "defense.hold-back.away-at-least",
                     "values": [1, 2, 3, 4, 5], "baseline": 3 },
          "others": "reckoner", "primary": "points", "deals": 20000, "confidence": 0.95 }
        """);
    StringBuilder rows =
        new StringBuilder(
            "setting,value,compared-with,deals,win-rate,points,measure,difference,"
                + "difference-low,difference-high,method\n");
    StringBuilder differences = new StringBuilder(DIFFERENCES);
    double[] values = {-1.9, -0.4, 0, -0.12, -0.7};
    for (int at = 0; at < values.length; at++) {
      String start = "defense.hold-back.away-at-least,%d,".formatted(at + 1);
      if (at == 2) {
        rows.append(start).append("yes,20000,0.25,0.4,,,,,\n");
      } else {
        String range = values[at] + "," + (values[at] - 0.35) + "," + (values[at] + 0.35);
        rows.append(start + "no,20000,0.25,0.4,points," + range + ",t over deals\n");
        differences.append(
            difference(
                "%d,3,points,primary,%s,0.4,%s,t over deals,0.01,0.04,0.9,10,6000,3000,3000"
                    .formatted(at + 1, 0.4 + values[at], range)));
      }
    }
    write(folder, "sweep.csv", rows.toString());
    write(folder, "differences.csv", differences.toString());
    return folder;
  }

  /** A field of situations. */
  public static Path branch(Path folder) {
    start(folder, "when-to-hold", "Saltmarsh Quay practice card");
    write(
        folder,
        "study.json",
        """
        { "study": "when-to-hold", "question": "Two exposures are seen: play on or hold back?",
          "card": "card.json",
          "branch": { "at": "discard",
                      "when": { "exposures-on-one-rack": [2], "away": [2, 3, 4, 5],
                                "wall": [60, 45, 30, 15] },
                      "options": ["own-need", "safest"], "player": "watchful" },
          "primary": "points", "deals": 20000, "confidence": 0.95 }
        """);
    double[][] middles = {
      {8.1, 5.3, 2.2, -0.4}, {5.2, 2.8, -2.5, -5.0}, {2.1, -0.2, -2.6, -5.1}, {0.1, -2.8, -5.9, 0}
    };
    int[] walls = {60, 45, 30, 15};
    StringBuilder rows =
        new StringBuilder(
            "exposures-on-one-rack,away,wall,option,compared-with,seat-games,games,deals-reached,"
                + "measure,unit,difference,difference-low,difference-high,method,p,p-holm\n");
    for (int down = 0; down < 4; down++) {
      for (int across = 0; across < 4; across++) {
        double value = -middles[down][across];
        String numbers =
            value == 0
                ? ",,,too few,,"
                : "%s,%s,%s,ratio over deals,%s"
                    .formatted(value, value - 2, value + 2, luck(Math.abs(value)));
        rows.append(
            "2,%d,%d,safest,own-need,80000,950,900,points,per game,%s\n"
                .formatted(across + 2, walls[down], numbers));
      }
    }
    write(folder, "branch.csv", rows.toString());
    return folder;
  }

  /** Differences of 2.1 to 2.4 look clear by themselves, but not among sixteen squares. */
  private static String luck(double size) {
    return size > 2.45 ? "0.001,0.01" : size > 2 ? "0.03,0.2" : "0.3,1";
  }

  /** One fixed table of few games, so that every figure can be worked out by hand. */
  public static Path table(Path folder) {
    start(folder, "by-hand", "Saltmarsh Quay practice card");
    write(
        folder,
        "study.json",
        "{ \"study\": \"by-hand\", \"card\": \"card.json\", \"table\": [\"nearest\"], \"deals\": 100 }");
    write(
        folder,
        "win-rates.csv",
        WINS
            + "table,0,nearest,100,100,20,0.2,0.133,0.289,Wilson,0.5,-2,3,t over deals,"
            + "8,12,10,50,15,5,3,1,0.4,40,2,1,0.5\n");
    String columns =
        "aimed-after-deal,aimed-after-passes,aimed-share,aimed-share-low,aimed-share-high,"
            + "aimed-at-end,wins,share-of-wins,share-of-wins-low,share-of-wins-high,win-rate-with-it,"
            + "win-rate-with-it-low,win-rate-with-it-high,win-rate-when-aimed,"
            + "win-rate-when-aimed-low,win-rate-when-aimed-high,points-when-won\n";
    write(
        folder,
        "families.csv",
        ("arm,family,lines,ways," + columns)
            + "table,Ladders,1,6,10,30,0.3,0.25,0.35,20,60,0.75,0.65,0.83,0.25,0.2,0.3,0.5,0.4,0.6,120\n"
            + "table,Vanes,1,4,90,70,0.7,0.65,0.75,80,20,0.25,0.17,0.35,0.034,0.01,0.06,0.1,0.05,0.2,150\n");
    write(
        folder,
        "endings.csv",
        "arm,wall,games,won-by-draw,won-by-exchange,won-on-discard,won-before-play,wall-games,void-games\n"
            + "table,31,10,10,0,0,0,0,0\ntable,30,20,0,0,20,0,0,0\ntable,16,5,0,0,5,0,0,0\n"
            + "table,15,40,20,0,20,0,0,0\ntable,1,5,5,0,0,0,0,0\ntable,0,20,0,0,0,0,15,5\n");
    write(
        folder,
        "overall.csv",
        "figure,part,games,unit,value,value-low,value-high,method\n"
            + "won,,100,share of games,0.8,0.711,0.867,Wilson\n"
            + "wall-game,,100,share of games,0.15,0.093,0.233,Wilson\n"
            + "void,,100,share of games,0.05,0.0215,0.112,Wilson\n"
            + "half-over,,100,tiles,15,15,15,order statistics\n");
    return folder;
  }

  /** Names that a page has to protect itself from. */
  public static Path hostile(Path folder) {
    String bite = "<script>document.title='harmed'</script>";
    start(folder, bite, "<img src=x onerror=alert(1)> \\\"quoted\\\" & 'single'");
    write(
        folder,
        "study.json",
        "{ \"study\": \"x\", \"question\": \""
            + bite
            + "\", \"arms\": {}, \"baseline\": \""
            + bite
            + "\", \"card\": \""
            + bite
            + "\", \"rules\": {\""
            + bite
            + "\": \""
            + bite
            + "\"} }");
    String arm = "\"" + bite + " | `x` [y](z)\"";
    write(
        folder,
        "differences.csv",
        DIFFERENCES
            + difference(
                arm
                    + ","
                    + bite
                    + ",points,primary,0.1,0.2,-0.1,-0.2,-0.05,"
                    + "t over deals,0.01,0.01,0.5,2,10,4,6"));
    write(folder, "win-rates.csv", WINS + wins(arm, 18000, 0.225, 6512, 11488, 12480, 41296, 8224));
    write(
        folder,
        "hand-choice.csv",
        "arm,line,family,nickname,value,concealed,ways,aimed-after-deal,aimed-after-passes,"
            + "aimed-at-end,wins,share-of-wins,win-rate-when-aimed,win-rate-when-aimed-low,"
            + "win-rate-when-aimed-high\n"
            + "table,"
            + bite
            + ","
            + bite
            + ","
            + bite
            + ",25,no,1,10,10,10,5,0.5,0.5,0.4,0.6\n");
    write(folder, "defense.csv", "arm,step,entries\n" + arm + "," + bite + ",7\n");
    write(folder, "faults.csv", "deal,command\n3," + bite + "\n");
    return folder;
  }

  private static String difference(String start) {
    return start + ",20000,0.0099,n fixed in advance\n";
  }

  private static String wins(
      String arm,
      long wins,
      double rate,
      long draw,
      long discard,
      long threw,
      long paid,
      long wall) {
    return "%s,all,reckoner,20000,80000,%d,%s,%s,%s,t over deals,0.31,0.1,0.52,t over deals,%d,%d,%d,%d,%d,0,5000,700,0.35,39,2.2,0.94,0.43\n"
        .formatted(arm, wins, rate, rate - 0.003, rate + 0.003, draw, discard, threw, paid, wall);
  }

  private static void start(Path folder, String study, String card) {
    write(folder, "manifest.json", MANIFEST.replace("STUDY", study).replace("CARD", card));
  }

  /** Writes a file of the folder, in place of an older one. */
  public static void write(Path folder, String name, String text) {
    try {
      Files.createDirectories(folder);
      Files.writeString(folder.resolve(name), WholeColumns.of(name, text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
