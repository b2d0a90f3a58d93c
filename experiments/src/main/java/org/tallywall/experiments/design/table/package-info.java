/** One fixed table. */
package org.tallywall.experiments.design.table;
