/** What the others may hold in one position, and what each tile of a rack would risk. */
package org.tallywall.experiments.reading;
