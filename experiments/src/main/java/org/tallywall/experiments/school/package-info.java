/** The players' school: what their decisions cost them, by kind of decision. */
package org.tallywall.experiments.school;
