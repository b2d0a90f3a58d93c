/**
 * Hostile input: files, folders and command lines that nobody should write and somebody will. A
 * {@code Source} makes an {@code Attack} from a valid seed and the {@code Chance} of its number; a
 * {@code Lane} puts it to the program in this process; {@code Promise} says what must hold of every
 * answer. The same seed and number are the same attack on every machine.
 */
package org.tallywall.experiments.attack;
