/** The course of one game: the engine asks, players answer, the table sees what happens. */
package org.tallywall.core.play;
