/** Tiles, sets of tiles, racks, and the notation in which people write them. */
package org.tallywall.core.tile;
