/** Comparisons as JSON and CSV, with the unit in every name. */
@NullMarked
package io.github.brinewright.exchange;

import org.jspecify.annotations.NullMarked;
