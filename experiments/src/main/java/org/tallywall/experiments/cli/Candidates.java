package org.tallywall.experiments.cli;

import java.util.Iterator;
import org.tallywall.experiments.guide.SheetToFill;
import org.tallywall.experiments.store.OnExisting;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerType;

/** Words that a shell offers where one of a few is wanted. */
final class Candidates {
  private Candidates() {}

  /** What to do with results that are there already. */
  static final class OfExisting implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return OnExisting.names().iterator();
    }
  }

  /** The questions for which there is a position to fill in. */
  static final class OfQuestions implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return SheetToFill.kinds().iterator();
    }
  }

  /** The players of the project. */
  static final class OfPlayers implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Catalog.standard().types().stream().map(PlayerType::id).iterator();
    }
  }
}
