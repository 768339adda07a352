/**
 * Text documents with places: YAML trees and JSON streams whose every value knows its file, line and column, JSON out, and
 * the faults that point at such places. The only package that knows Jackson.
 */
@NullMarked
package org.fallrule.document;

import org.jspecify.annotations.NullMarked;
