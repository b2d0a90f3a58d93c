package org.tallywall.reports.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.SampleTables;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.results.WrongResultsException;

/** Papers are the same bytes in every country. */
class LocaleTest {
  /** Conversions that follow the machine's country, and changes of case that do. */
  private static final Pattern BY_COUNTRY =
      Pattern.compile(
          "%[-#+ 0,(]*[0-9]*(\\.[0-9]+)?[dfegxoaSEGXA]"
              + "|to(Upper|Lower)Case\\(\\)|String\\.format\\((?!Locale\\.ROOT)"
              + "|NumberFormat\\b|DecimalFormat|DateTimeFormatter|Locale\\.getDefault|Collator");

  @TempDir private Path folder;

  @Test
  void papers_whereDigitsHaveOtherForms_areTheSameBytes() throws IOException {
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ROOT);
      List<String> plain = papers();
      for (String country : List.of("ar-EG-u-nu-arab", "fa-IR", "tr-TR", "th-TH-u-nu-thai")) {
        Locale.setDefault(Locale.forLanguageTag(country));
        assertThat(papers()).as(country).isEqualTo(plain);
      }
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat("%d".formatted(7)).as("a country with digits of its own").isNotEqualTo("7");
    } finally {
      Locale.setDefault(usual);
    }
  }

  private List<String> papers() throws IOException {
    List<String> papers = new ArrayList<>();
    for (String design : RealResults.DESIGNS) {
      Path results = RealResults.write(folder.resolve(design), RealResults.files(design));
      papers.addAll(AllPapers.of(results));
    }
    papers.add(CsvWriter.text(SampleTables.ways()));
    Path broken = RealResults.write(folder.resolve("cut"), RealResults.files("table"));
    Files.writeString(broken.resolve("win-rates.csv"), "arm,seat\n1\n");
    try {
      AllPapers.of(broken);
    } catch (WrongResultsException said) {
      papers.add(said.getMessage());
    }
    return papers;
  }

  @Test
  void source_formatsNothingByCountry() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      List<Path> sources = files.filter(file -> file.toString().endsWith(".java")).toList();
      assertThat(sources).isNotEmpty();
      for (Path source : sources) {
        assertThat(BY_COUNTRY.matcher(Files.readString(source)).results().map(hit -> hit.group()))
            .as(source.toString())
            .isEmpty();
      }
    }
  }
}
