/** Players from jars of a user's own: read as a whole, digested, loaded from memory, tried out. */
package org.tallywall.strategies.jar;
