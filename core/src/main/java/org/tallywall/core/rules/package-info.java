/** The rules of the table: switches, what is legal, who pays. */
package org.tallywall.core.rules;
