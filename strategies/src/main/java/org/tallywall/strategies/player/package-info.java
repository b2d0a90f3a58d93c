/** Players, made of judgments and habits. */
package org.tallywall.strategies.player;
