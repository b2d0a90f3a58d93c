package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.tallywall.experiments.paper.SchoolPaper;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.school.Counts;
import org.tallywall.experiments.school.Judged;
import org.tallywall.experiments.school.School;
import org.tallywall.experiments.school.SchoolFolder;
import org.tallywall.experiments.school.SchoolQuestion;
import org.tallywall.experiments.school.SchoolResult;
import org.tallywall.experiments.school.SchoolTable;
import org.tallywall.experiments.school.SchoolWords;
import org.tallywall.experiments.study.Patience;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.text.Lettering;
import org.tallywall.reports.text.TextTable;

/** Looks at decisions, prints what came out, and has it put on paper when all is there. */
final class SchoolRun {
  private static final long PAUSE = TimeUnit.SECONDS.toNanos(5);

  private final Console console;
  private final SchoolQuestion question;
  private final SchoolFolder folder;
  private final School school;
  private long next = System.nanoTime() + PAUSE;

  SchoolRun(Console console, SchoolQuestion question, SchoolFolder folder, int threads) {
    this.console = console;
    this.question = question;
    this.folder = folder;
    this.school = new School(question, RunLimits.of(threads, Patience.USUAL.decisionSeconds()));
  }

  int run() {
    console.interrupts().begins(times -> school.stop());
    SchoolResult result;
    Counts counts;
    try {
      counts = school.count(game -> tell("game", game, question.games()));
      if (school.stopped()) {
        console.complain("tallywall: stopped while games were played; no decision was looked at");
        return Program.STOPPED;
      }
      result = look(counts);
    } catch (Throwable thrown) {
      throw ReviewPrinter.told(thrown, question.players());
    } finally {
      console.interrupts().over();
    }
    print(result);
    if (!result.complete()) {
      console.say("The same command goes on where it was stopped.");
      return Program.STOPPED;
    }
    SchoolPapers.write(new SchoolPaper(result), folder, school, counts, console);
    return Program.DONE;
  }

  private SchoolResult look(Counts counts) {
    List<Judged> all = new ArrayList<>(folder.begin(school, counts));
    int planned = school.decisions(counts);
    school.look(
        counts,
        all.size(),
        one -> {
          folder.add(one);
          all.add(one);
          tell("decision", all.size(), planned);
        });
    return SchoolResult.of(question, planned, counts, all);
  }

  private synchronized void tell(String what, int number, int of) {
    long now = System.nanoTime();
    if (console.progress() && now - next >= 0) {
      next = now + PAUSE;
      console.complain(
          "tallywall: %s %s of %s".formatted(what, Words.grouped(number), Words.grouped(of)));
    }
  }

  private void print(SchoolResult result) {
    if (!result.complete()) {
      console.sayWrapped(SchoolWords.notComplete(result));
    }
    if (result.kinds().isEmpty()) {
      return;
    }
    console.sayWrapped(SchoolWords.headline(result));
    console.say("");
    console
        .out()
        .print(TextTable.text(SchoolTable.kinds(result), console.width(), Lettering.UNICODE));
    console.say("");
    SchoolWords.notes(result).forEach(console::sayWrapped);
  }
}
