/** A home's year day by day: the same drawn days through any bed and control. */
@NullMarked
package io.github.brinewright.simulation;

import org.jspecify.annotations.NullMarked;
