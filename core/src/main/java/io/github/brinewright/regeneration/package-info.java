/** Regeneration control, interval, brine refill and the water each cycle step takes. */
@NullMarked
package io.github.brinewright.regeneration;

import org.jspecify.annotations.NullMarked;
