package org.tallywall.experiments.cli;

import org.tallywall.experiments.guide.ReadyFiles;
import org.tallywall.experiments.words.Words;

/** What to do first, for somebody who typed the program's name alone. */
final class Welcome {
  private Welcome() {}

  static void print(Console console) {
    String study = ReadyFiles.find().map(ready -> ready.firstStudy().toString()).orElse("STUDY");
    console.say("Tallywall plays American mahjong on your own card in many thousands of games and");
    console.say("counts what happened. First steps:");
    console.say("");
    step(
        console,
        "run " + Words.typed(study),
        "plays a small study, with a page to open at the end");
    step(console, "study list", "more studies that are ready to run");
    step(console, "study new", "a study of your own, to fill in");
    step(console, "card check my-card.json", "says what is wrong with a card that you typed");
    step(console, "players", "who can play");
    step(console, "rules", "the rules of your table");
    console.say("");
    console.say("tallywall help lists every command; tallywall help run explains one.");
  }

  private static void step(Console console, String command, String what) {
    console.say("  tallywall " + command);
    console.say("      " + what);
  }
}
