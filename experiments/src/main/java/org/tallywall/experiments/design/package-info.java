/** What a design of a study is: how it is read, played, found again and put into tables. */
package org.tallywall.experiments.design;
