/** Vector charts, drawn on the same canvas as text. */
@NullMarked
package io.github.brinewright.internal.chart;

import org.jspecify.annotations.NullMarked;
