package org.tallywall.core.sheet;

import java.util.List;
import java.util.Locale;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.PassRules;
import org.tallywall.core.text.Faults;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/** Checks what a sheet says that the table heard, by the rules and the rest of the sheet. */
final class HeardCheck {
  private final SheetDraft draft;
  private final TableSetup setup;
  private final Faults faults;

  HeardCheck(SheetDraft draft, TableSetup setup, Faults faults) {
    this.draft = draft;
    this.setup = setup;
    this.faults = faults;
  }

  void check() {
    if (draft.moment instanceof Moment.Turn turn
        && turn.claimed()
        && draft.exposed(draft.seat) == 0) {
      faults.fault(draft.place("moment"), "after a claim the player has a group exposed");
    }
    dead();
    stopped();
    courtesy();
    draft.heard.exchanges.forEach(this::exchange);
    if (!draft.moment.inPlay()) {
      for (String line : List.of("dead", "exchanged", "lost")) {
        if (draft.says(line)) {
          faults.fault(draft.place(line), "during the passes that cannot have happened yet");
        }
      }
    }
  }

  private void dead() {
    if (draft.heard.dead.contains(draft.seat)) {
      faults.fault(
          draft.place("dead"),
          String.format(
              Locale.ROOT,
              "seat %d is asked, and a player whose hand is dead is asked nothing",
              draft.seat));
    }
  }

  private void stopped() {
    if (draft.heard.stoppers.isEmpty()) {
      return;
    }
    PassRules.Second second = setup.rules().charleston().second();
    boolean asks =
        second == PassRules.Second.ANY_PLAYER_MAY_STOP || second == PassRules.Second.MAJORITY;
    if (!asks || !setup.rules().charleston().first()) {
      faults.fault(
          draft.place("stopped"), "by these rules nobody is asked whether to stop (rule 2.4)");
    } else if (secondRound()) {
      faults.fault(
          draft.place("stopped"), "the sheet has a pass of the second round, so nobody stopped it");
    } else if (draft.moment instanceof Moment.Stop || draft.moment instanceof Moment.Pass) {
      faults.fault(draft.place("stopped"), "at this moment nobody has been asked yet");
    }
  }

  private boolean secondRound() {
    return (draft.moment instanceof Moment.Pass pass && isSecond(pass.step()))
        || draft.passes.keySet().stream().anyMatch(HeardCheck::isSecond);
  }

  private static boolean isSecond(PassStep step) {
    return step.compareTo(PassStep.LEFT_1) > 0;
  }

  private void courtesy() {
    boolean before = !draft.moment.inPlay() && !(draft.moment instanceof Moment.CourtesyGive);
    if (!draft.heard.anyCourtesy() && draft.courtesy == null) {
      return;
    }
    String given = draft.says("passed") ? "passed" : "received";
    String line = draft.heard.anyCourtesy() ? "courtesy" : given;
    if (!setup.rules().charleston().courtesy()) {
      faults.fault(draft.place(line), "by these rules there is no courtesy pass (rule 2.5)");
    } else if (before) {
      faults.fault(draft.place(line), "at this moment the courtesy pass is still to come");
    } else if (draft.courtesy != null && !draft.moment.inPlay()) {
      faults.fault(draft.place(given), "at this moment nothing was given across yet");
    }
  }

  private void exchange(Heard.Redeemed one) {
    List<Exposure> exposures = draft.exposures.get(one.owner());
    boolean gone = draft.heard.dead.contains(one.owner());
    if (one.exposure() == SheetDraft.NONE) {
      if (!gone && exposures.stream().noneMatch(laid -> laid.kind() == one.tile())) {
        faults.fault(one.place(), noSuch(one));
      }
    } else if (!gone
        && (one.exposure() >= exposures.size()
            || exposures.get(one.exposure()).kind() != one.tile())) {
      faults.fault(one.place(), noSuch(one));
    }
    if (one.now() && (one.seat() != draft.seat || !(draft.moment instanceof Moment.Turn))) {
      faults.fault(one.place(), "\"now\" is for an exchange of the player asked, in its turn");
    }
  }

  private String noSuch(Heard.Redeemed one) {
    return String.format(
        Locale.ROOT,
        "seat %d has no such exposure of %s on this sheet; an exposure is written as it lies now",
        one.owner(),
        Tile.symbol(one.tile()));
  }
}
