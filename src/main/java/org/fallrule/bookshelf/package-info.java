/** Work with rule books as such: what there is, what applies and who set it, whether a book and its examples hold. */
@NullMarked
package org.fallrule.bookshelf;

import org.jspecify.annotations.NullMarked;
