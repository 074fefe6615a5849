/** Immutable physical quantities; the unit is in the name of every factory and accessor. */
@NullMarked
package io.github.brinewright.quantity;

import org.jspecify.annotations.NullMarked;
