/** A home's year day by day, and what it says of controls, reserves, dosages and the choice. */
@NullMarked
package io.github.brinewright.year;

import org.jspecify.annotations.NullMarked;
