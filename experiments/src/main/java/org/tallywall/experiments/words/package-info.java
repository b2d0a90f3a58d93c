/** Small things about words that several packages need. */
package org.tallywall.experiments.words;
