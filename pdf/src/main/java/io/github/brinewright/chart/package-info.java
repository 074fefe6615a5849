/** Vector charts, drawn on the same canvas as text. */
@NullMarked
package io.github.brinewright.chart;

import org.jspecify.annotations.NullMarked;
