/** Documents for a console: plain lines no wider than the window. */
package org.tallywall.reports.console;
