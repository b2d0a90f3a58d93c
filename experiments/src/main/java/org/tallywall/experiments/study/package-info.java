/** The question as a file: studies, their arms, and reading them. */
package org.tallywall.experiments.study;
