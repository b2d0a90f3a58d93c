/** Benchmarks, each beside the version that a person would write first. */
package org.tallywall.experiments.benchmarks;
