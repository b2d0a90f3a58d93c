package org.tallywall.strategies.read;

/**
 * What a reader is told of the others beside what its seat sees. A fair reader is told {@link
 * #NOTHING}; anything else is for yardsticks, which show what it would be worth to know.
 */
public interface Revealed {
  /** Nothing at all. */
  Revealed NOTHING =
      new Revealed() {
        @Override
        public boolean readiness() {
          return false;
        }

        @Override
        public boolean waits() {
          return false;
        }

        @Override
        public boolean ready(int other) {
          return false;
        }

        @Override
        public boolean winsOn(int other, int kind) {
          return false;
        }
      };

  /**
   * Whether it is told who would win on some tile.
   *
   * @return true if {@link #ready} tells
   */
  boolean readiness();

  /**
   * Whether it is told which tiles they are.
   *
   * @return true if {@link #winsOn} tells
   */
  boolean waits();

  /**
   * Whether there is a tile on which an opponent may win if it is thrown now.
   *
   * @param other her seat
   * @return true if so
   */
  boolean ready(int other);

  /**
   * Whether an opponent may win on a tile if it is thrown now.
   *
   * @param other her seat
   * @param kind a kind, 0 to 35
   * @return true if so
   */
  boolean winsOn(int other, int kind);
}
