package org.tallywall.strategies.player;

import org.junit.jupiter.api.Tag;

/**
 * Every player of the catalog on a hundred deals, asked three times on sixteen, or as many as there
 * is time for.
 */
@Tag("one-jdk")
class EveryPlayerTest extends EveryPlayer {
  EveryPlayerTest() {
    super(100, 16, 3, 1);
  }
}
