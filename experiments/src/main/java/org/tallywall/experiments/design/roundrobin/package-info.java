/** Everyone against everyone. */
package org.tallywall.experiments.design.roundrobin;
