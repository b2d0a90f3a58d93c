package org.tallywall.strategies.player;

import org.junit.jupiter.api.Tag;

/** Every player of the catalog on two thousand deals, asked three times on four hundred. */
@Tag("long")
class EveryPlayerAtLengthTest extends EveryPlayer {
  EveryPlayerAtLengthTest() {
    super(2_000, 400, 10, 3);
  }
}
