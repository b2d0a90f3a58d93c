/** Reading files that people type: JSON with places, faults collected with line and column. */
package org.tallywall.core.text;
