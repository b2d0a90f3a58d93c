/** Study files, and the list of all designs. */
package org.tallywall.experiments.studies;
