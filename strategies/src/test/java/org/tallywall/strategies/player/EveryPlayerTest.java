package org.tallywall.strategies.player;

/** Every player of the catalog on a hundred deals, or as many as there is time for. */
class EveryPlayerTest extends EveryPlayer {
  EveryPlayerTest() {
    super(100, 3, 1);
  }
}
