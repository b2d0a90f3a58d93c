/** One game as a page, to be followed tile by tile. */
package org.tallywall.experiments.page;
