/**
 * What rule books say of a place apart from their rules: its climate, its rain and how much of it runs off, how well its marks
 * are known and how deep its utilities lie, how lines are laid there.
 */
@NullMarked
package org.fallrule.locality;

import org.jspecify.annotations.NullMarked;
