@NullMarked
package org.fallrule.review;

import org.jspecify.annotations.NullMarked;
