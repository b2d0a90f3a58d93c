/** Keyed random streams: every piece of work has numbers of its own, whoever asks and when. */
package org.tallywall.core.random;
