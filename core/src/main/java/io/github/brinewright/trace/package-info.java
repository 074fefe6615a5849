/** Calculation steps and findings: what was computed, from which numbers, on whose authority. */
@NullMarked
package io.github.brinewright.trace;

import org.jspecify.annotations.NullMarked;
