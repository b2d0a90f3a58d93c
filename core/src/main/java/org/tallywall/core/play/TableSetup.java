package org.tallywall.core.play;

import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.rules.TableRules;

/**
 * What lies on the table before a game: the card and the rules. Immutable; serves all threads.
 *
 * @param hands the card's concrete hands
 * @param rules the rules
 */
public record TableSetup(ConcreteHands hands, TableRules rules) {}
