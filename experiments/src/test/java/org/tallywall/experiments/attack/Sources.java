package org.tallywall.experiments.attack;

import java.util.List;

/** The kinds of attacks and how often each comes: mostly what is read in a moment. */
final class Sources {
  /** What the shares add up to. */
  static final int SHARES = 10_000;

  private final List<Source> sources;

  Sources(Seeds seeds) {
    FileSources files = new FileSources(seeds);
    FolderSources folders = new FolderSources(seeds);
    CommandSource commands = new CommandSource(seeds);
    this.sources =
        List.of(
            new Source("card", 2_200, files::card),
            new Source("card table", 1_500, files::cardTable),
            new Source("study", 1_500, files::study),
            new Source("rules", 500, files::rules),
            new Source("player", 400, files::player),
            new Source("sheet", 1_000, files::sheet),
            new Source("rack", 1_000, files::rack),
            new Source("wrong kind", 298, files::wrongKind),
            new Source("records", 600, folders::records),
            new Source("command", 400, commands::next),
            new Source("report", 250, folders::report),
            new Source("report, a pack", 20, folders::pack),
            new Source("verify", 100, folders::verify),
            new Source("resume", 60, folders::resume),
            new Source("existing", 60, folders::existing),
            new Source("study, a game", 80, files::studyGame),
            new Source("study, played", 30, files::studyRun),
            new Source("study, tried out", 2, files::studyDryRun));
  }

  List<Source> all() {
    return sources;
  }

  /** The attack with a number: always the same one. */
  Attack attack(long seed, long number) {
    Chance chance = new Chance(seed, number);
    int place = chance.below(SHARES);
    for (Source source : sources) {
      place -= source.share();
      if (place < 0) {
        return source.next(chance);
      }
    }
    throw new IllegalStateException("the shares add up to less than " + SHARES);
  }
}
