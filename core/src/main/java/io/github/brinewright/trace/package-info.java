/** How a result was worked out: figures, steps, and the sources that state them. */
@NullMarked
package io.github.brinewright.trace;

import org.jspecify.annotations.NullMarked;
