/** Why a player chose as it did: a closed list of reasons with their numbers. */
package org.tallywall.strategies.reason;
