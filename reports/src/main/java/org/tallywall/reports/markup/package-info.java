/**
 * Elements with attributes and text, and their one way to characters: whatever a name holds, it
 * stands as text. Pictures (SVG) and pages (HTML) are both made of these.
 *
 * <p>A template engine was weighed (jte 3.2.5) and left out: pages are made of parts within parts,
 * which its templates would have to take apart again; the pictures need an escaping writer anyway;
 * and the sources that it generates fail this build, which wants every public class documented.
 */
package org.tallywall.reports.markup;
