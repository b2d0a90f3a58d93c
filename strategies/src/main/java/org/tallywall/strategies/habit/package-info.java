/** Single habits with named settings: passing, claiming, jokers, discarding, defence. */
package org.tallywall.strategies.habit;
