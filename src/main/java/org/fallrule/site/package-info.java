/**
 * The plan as immutable features in one local metric frame. Every feature knows the file and the place it came from; every
 * layer is supplied, stated absent, or not supplied.
 */
@NullMarked
package org.fallrule.site;

import org.jspecify.annotations.NullMarked;
