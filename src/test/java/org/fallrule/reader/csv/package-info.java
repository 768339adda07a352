@NullMarked
package org.fallrule.reader.csv;

import org.jspecify.annotations.NullMarked;
