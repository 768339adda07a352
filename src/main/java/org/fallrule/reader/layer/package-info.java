/** A layer as its file gives it, before any meaning is put on its columns: geometry in the file's own coordinates, raw attributes. */
@NullMarked
package org.fallrule.reader.layer;

import org.jspecify.annotations.NullMarked;
