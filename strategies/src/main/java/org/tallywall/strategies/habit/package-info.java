/** Single habits with named settings: passing, claiming, jokers, discarding, defense. */
package org.tallywall.strategies.habit;
