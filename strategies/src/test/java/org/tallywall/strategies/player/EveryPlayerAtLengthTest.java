package org.tallywall.strategies.player;

import org.junit.jupiter.api.Tag;

/** Every player of the catalog on two thousand deals. */
@Tag("long")
class EveryPlayerAtLengthTest extends EveryPlayer {
  EveryPlayerAtLengthTest() {
    super(2_000, 10, 3);
  }
}
