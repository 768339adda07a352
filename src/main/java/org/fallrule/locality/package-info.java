/** What rule books say of a place apart from their rules: its climate, its rain, its soils, how well its marks are known. */
@NullMarked
package org.fallrule.locality;

import org.jspecify.annotations.NullMarked;
