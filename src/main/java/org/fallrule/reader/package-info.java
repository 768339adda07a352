/** A site folder's files made into a plan: what is what, which columns and units, into one local metric frame. */
@NullMarked
package org.fallrule.reader;

import org.jspecify.annotations.NullMarked;
