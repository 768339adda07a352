/** One round pipe: roughness, capacity, the depth that a steady flow takes in it, the depth at which it turns from tranquil to rapid. */
@NullMarked
package org.fallrule.hydraulics.pipe;

import org.jspecify.annotations.NullMarked;
