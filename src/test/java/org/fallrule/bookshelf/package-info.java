@org.jspecify.annotations.NullMarked
package org.fallrule.bookshelf;
