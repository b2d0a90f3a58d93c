/**
 * Figures drawn as SVG: real text, a title and a description, the same bytes everywhere.
 *
 * <p>A picture is 1600 units wide, which is its width in pixels. On a slide of 13⅓ inches that is
 * 120 pixels to the inch; a point is a seventy-second of an inch, so 14 points are 23⅓ pixels. No
 * text is smaller than 24 ({@link org.tallywall.reports.svg.SvgWriter#LEAST_TEXT}): 14.4 points.
 */
package org.tallywall.reports.svg;
