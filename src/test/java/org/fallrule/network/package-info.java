@NullMarked
package org.fallrule.network;

import org.jspecify.annotations.NullMarked;
