/** What somebody looks up before a study is written: settings, switches, skeletons, ready files. */
package org.tallywall.experiments.guide;
