package org.tallywall.experiments.studies;

import java.util.List;
import org.tallywall.experiments.design.DesignKind;
import org.tallywall.experiments.design.arms.ArmsKind;
import org.tallywall.experiments.design.branch.BranchKind;
import org.tallywall.experiments.design.roundrobin.RoundRobinKind;
import org.tallywall.experiments.design.sweep.SweepKind;
import org.tallywall.experiments.design.table.TableKind;

/** The designs that a study can have: the one list of them. */
final class Designs {
  static final List<DesignKind> ALL =
      List.of(
          new ArmsKind(), new TableKind(), new RoundRobinKind(), new SweepKind(), new BranchKind());

  private Designs() {}
}
