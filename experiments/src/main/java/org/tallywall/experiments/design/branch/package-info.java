/** Each option of one decision on the same hidden tiles. */
package org.tallywall.experiments.design.branch;
