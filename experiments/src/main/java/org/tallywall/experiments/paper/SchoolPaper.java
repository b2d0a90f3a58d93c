package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.card.Card;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.school.Judged;
import org.tallywall.experiments.school.SchoolQuestion;
import org.tallywall.experiments.school.SchoolResult;
import org.tallywall.experiments.school.SchoolTable;
import org.tallywall.experiments.school.SchoolWords;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Link;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.html.Extras;
import org.tallywall.reports.html.PageWriter;
import org.tallywall.reports.markdown.DocumentWriter;
import org.tallywall.reports.table.Table;

/** What the players' school found, on paper. */
public final class SchoolPaper {
  /** The folder of the sheets. */
  public static final String DEAREST = "dearest";

  private static final String MAKER = "Tallywall, page of the players' school";

  private final SchoolResult result;
  private final Figure chart;

  /**
   * Paper.
   *
   * @param result what was found
   */
  public SchoolPaper(SchoolResult result) {
    this.result = result;
    this.chart = SchoolChart.of(result);
  }

  /**
   * What is on paper.
   *
   * @return what was found
   */
  public SchoolResult result() {
    return result;
  }

  /**
   * What the sheets of the dearest decisions are called.
   *
   * @return names of files, in the order of the decisions
   */
  public List<String> names() {
    List<String> names = new ArrayList<>();
    for (Judged one : result.dearest()) {
      String number = String.valueOf(100 + names.size() + 1).substring(1);
      names.add(number + "-" + one.kind().id() + ".txt");
    }
    return names;
  }

  /**
   * The table of kinds.
   *
   * @return a row for each, and one for all
   */
  public Table kinds() {
    return SchoolTable.kinds(result);
  }

  /**
   * The table of the dearest decisions.
   *
   * @return a row for each
   */
  public Table dearest() {
    return SchoolTable.dearest(result, names());
  }

  private Document document() {
    List<Part> parts = new ArrayList<>();
    parts.add(new Part.Answer(SchoolWords.headline(result), List.of()));
    parts.add(new Part.Chart(chart));
    parts.add(new Part.Grid(kinds(), Handles.COPY));
    SchoolWords.notes(result).forEach(note -> parts.add(Part.Paragraph.of(note)));
    if (!result.dearest().isEmpty()) {
      parts.add(new Part.Grid(dearest(), Handles.SORT_AND_FILTER));
      parts.add(Part.Paragraph.of(SchoolWords.dearest()));
      parts.add(
          new Part.Links(
              names().stream().map(name -> new Link(name, DEAREST + "/" + name)).toList()));
    }
    parts.add(new Part.Facts(facts()));
    return new Document(SchoolWords.title(result.question()), parts);
  }

  private List<Part.Fact> facts() {
    SchoolQuestion question = result.question();
    Card card = question.setup().hands().card();
    return List.of(
        new Part.Fact("card", card.name()),
        new Part.Fact("table rules", rules(question.setup().rules())),
        new Part.Fact(
            "players, East first",
            String.join(", ", question.players().stream().map(one -> one.name()).toList())),
        new Part.Fact("games in which decisions were counted", Words.grouped(question.games())),
        new Part.Fact("decisions looked at", Words.grouped(result.judged().size())),
        new Part.Fact(
            "guesses of the hidden tiles for each pair of choices", SchoolWords.worlds(question)),
        new Part.Fact("seed", String.valueOf(question.seed())));
  }

  private static String rules(TableRules rules) {
    List<String> changed = new ArrayList<>();
    rules
        .switches()
        .forEach(
            (name, value) -> {
              if (!value.equals(TableRules.STANDARD.switches().get(name))) {
                changed.add(name + " " + value);
              }
            });
    return changed.isEmpty() ? "as usual" : String.join(", ", changed);
  }

  /**
   * The picture.
   *
   * @return the chart
   */
  public Figure figure() {
    return chart;
  }

  /**
   * The notes in Markdown.
   *
   * @return lines, each ended by a line feed
   */
  public String notes() {
    return DocumentWriter.text(
        document(),
        figure ->
            Optional.of(
                new Link(figure.caption().title(), "charts/" + figure.caption().stem() + ".svg")));
  }

  /**
   * The page.
   *
   * @return the whole file
   */
  public String page() {
    return PageWriter.text(document(), new Extras("", "", MAKER));
  }
}
