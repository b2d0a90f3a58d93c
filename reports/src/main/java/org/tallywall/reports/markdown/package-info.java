/** Tables and the page that explains their columns, as Markdown. */
package org.tallywall.reports.markdown;
