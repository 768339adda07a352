package org.fallrule.locality;

import java.util.Optional;
import org.fallrule.document.Place;

/**
 * What a book or a site.yaml says, and who says it.
 *
 * @param value what it says
 * @param setBy the line that says it
 * @param basis what it rests on, in one line
 */
public record Stated<T>(T value, Place setBy, Optional<String> basis) {}
