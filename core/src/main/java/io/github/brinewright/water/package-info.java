/** The water analysis, hardness in its compensated form, and what softening adds to the water. */
@NullMarked
package io.github.brinewright.water;

import org.jspecify.annotations.NullMarked;
