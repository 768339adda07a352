/** Looks over the files of a folder that nobody has described yet, and drafts a site.yaml that says what is what. */
@NullMarked
package org.fallrule.intake;

import org.jspecify.annotations.NullMarked;
