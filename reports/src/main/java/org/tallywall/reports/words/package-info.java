/** What is said of results, in words for people who play; every sentence stands here once. */
package org.tallywall.reports.words;
