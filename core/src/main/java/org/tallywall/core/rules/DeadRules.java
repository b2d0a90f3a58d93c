package org.tallywall.core.rules;

/**
 * Dead hands (section 6).
 *
 * @param called whether hands that all can see to be impossible are called dead
 * @param threeVoid whether three dead hands make the game void, or a wall game
 */
public record DeadRules(boolean called, boolean threeVoid) {
  static DeadRules of(TableRules.Values values) {
    return new DeadRules(values.is("dead.calls", "AUTO"), values.is("dead.threeDead", "VOID"));
  }
}
