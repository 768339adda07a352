@NullMarked
package org.fallrule.remedy;

import org.jspecify.annotations.NullMarked;
