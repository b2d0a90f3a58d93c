package org.tallywall.experiments.gauges;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.figure.IntervalPlot;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;

/** The section on what it would be worth to know, from figures that are set beforehand. */
class KnowingPageTest {
  private static final String MARK = " (sees more than a seat may)";

  @TempDir Path folder;

  /** Points a game; in the first card the second yardstick has too few deals for a range. */
  private Results results(String card, String payment, double never, String racks)
      throws IOException {
    Path at = Files.createDirectory(folder.resolve(card + payment));
    String points = "points,primary,per game,0,0";
    Files.writeString(
        at.resolve("differences.csv"),
        String.join(
            "\n",
            "arm,baseline,measure,role,unit,level,baseline-level,difference,difference-low,"
                + "difference-high,method,p,p-holm,correlation,gain,deals,discordant,more,fewer,"
                + "most-discordant,detectable,games-to-notice",
            "watchful,reckoner," + points + ",0.5,-1,2" + REST,
            "reads all that can be seen,reckoner," + points + ",0.75,-0.5,2" + REST,
            "who is one away" + MARK + ",reckoner," + points + ",0.25,-0.5,1" + REST,
            String.format(
                Locale.ROOT,
                "never the winning tile%s,reckoner,%s,%s,%s,%s%s",
                MARK,
                points,
                never,
                never - 1,
                never + 1,
                REST),
            "all racks" + MARK + ",reckoner," + points + racks + REST,
            ""));
    Files.writeString(at.resolve("study.json"), "{ \"confidence\": 0.99, \"deals\": 200 }");
    Files.writeString(
        at.resolve("manifest.json"),
        """
        { "tallywall": "0.1.0", "study": "s", "card": "%s card", "card-digest": "sha256:2",
          "deals": 200, "seed": 77 }
        """
            .formatted(card));
    return ResultsFolder.read(at, new ThisProgram("", 1));
  }

  private static final String REST = ",t over deals,0.5,1,0.5,2,200,50,30,20,,2,";

  @Test
  void section_saysTheLeastAndTheMostOfTheCards_andMarksWhoSeesMore() throws IOException {
    KnowingPage page =
        new KnowingPage(
            List.of(
                List.of(results("Tern", "-a", 2, ",3,1,5"), results("Gull", "-a", 4, ",3,1,5")),
                List.of(results("Tern", "-b", 11, ",,,"), results("Gull", "-b", 9, ",3,1,5"))));
    IntervalPlot figure = page.figure();
    String text = page.text("picture.svg", figure).replace('\n', ' ');

    assertThat(page.bound())
        .contains("from +200 points (+100 to +300; Tern) to +400 points (+300 to +500; Gull)")
        .contains(
            "from +900 points (+800 to +1,000; Gull) to +1,100 points (+1,000 to +1,200; Tern)")
        .contains("`watchful` scores from +50 points (−100 to +200; Tern)")
        .contains("all that can be seen scores from +80 points (−50 to +200; Tern)");
    assertThat(text)
        .contains("200 deals", "seed 77", "ranges of 99 %", "*see more than a seat may*")
        .contains("](picture.svg)")
        .contains("| all racks |  | 300 (100 to 500) |")
        .contains("In an empty cell too few deals came out differently.");
    assertThat(figure.rows()).hasSize(10);
    assertThat(figure.rows().get(6).label()).isEqualTo("never the winning tile, Tern");
    assertThat(figure.caption().slide().mark()).contains("see more than a seat may");
    assertThat(figure.rows().get(8).spots().get(1).words()).contains("too few");
  }
}
