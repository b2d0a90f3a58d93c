/** What each choice in one position is worth: games played on after every one of them. */
package org.tallywall.experiments.review;
