/** Players, made of judgements and habits. */
package org.tallywall.strategies.player;
