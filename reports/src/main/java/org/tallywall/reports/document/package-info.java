/**
 * Pages as plain values: paragraphs, tables, figures and sections, in their order. One document
 * becomes a page for a browser, a plain fragment for a word processor, or Markdown.
 */
package org.tallywall.reports.document;
