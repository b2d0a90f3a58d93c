/**
 * What people read of results: notes, a page, charts, and packs of several studies. Everything is
 * made from a results folder alone; a file that is not there is a section that is not there.
 */
package org.tallywall.experiments.paper;
