/** The explicit list of players with their settings and descriptions. */
package org.tallywall.strategies.catalog;
