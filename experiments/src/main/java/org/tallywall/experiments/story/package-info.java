/** A game told in words. */
package org.tallywall.experiments.story;
