@NullMarked
package org.fallrule.reader.layer;

import org.jspecify.annotations.NullMarked;
