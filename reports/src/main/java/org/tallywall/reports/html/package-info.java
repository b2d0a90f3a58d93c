/** Documents as HTML: a self-contained page, and a fragment for word processors and mails. */
package org.tallywall.reports.html;
