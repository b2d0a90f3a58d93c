package org.tallywall.strategies.player;

import org.junit.jupiter.api.Tag;

/** Every player of the catalog on a thousand deals, asked three times on two hundred. */
@Tag("long")
class EveryPlayerAtLengthTest extends EveryPlayer {
  EveryPlayerAtLengthTest() {
    super(1_000, 200, 10, 3);
  }
}
