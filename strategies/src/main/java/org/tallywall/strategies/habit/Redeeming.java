package org.tallywall.strategies.habit;

/** When a player redeems a joker. */
enum Redeeming {
  /** When the rack is worth no less for it. */
  WHEN_USEFUL,
  /** Always. */
  AT_ONCE,
  /** Only where that completes the hand. */
  HOLD_BACK,
  /** Not at all. */
  NEVER
}
