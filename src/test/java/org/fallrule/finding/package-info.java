@NullMarked
package org.fallrule.finding;

import org.jspecify.annotations.NullMarked;
