@NullMarked
package org.fallrule.reference;

import org.jspecify.annotations.NullMarked;
