/** Which table of programmed players is most like a club's, by the tally that the club kept. */
package org.tallywall.experiments.club;
