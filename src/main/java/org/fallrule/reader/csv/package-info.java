/** Reads surveyed points from tables of comma-separated values (RFC 4180), as collectors and spreadsheets write them. */
@NullMarked
package org.fallrule.reader.csv;

import org.jspecify.annotations.NullMarked;
