/** Commands, options and exit codes; the only package that prints. */
@NullMarked
package org.fallrule.cli;

import org.jspecify.annotations.NullMarked;
