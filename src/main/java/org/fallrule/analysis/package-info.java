/**
 * The plan with what follows from it: the ground, the drain and the water in it, how far features lie apart and how well that is
 * known. Start at {@link org.fallrule.analysis.SiteAnalysis}.
 */
@NullMarked
package org.fallrule.analysis;

import org.jspecify.annotations.NullMarked;
