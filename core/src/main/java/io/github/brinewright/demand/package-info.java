/** What a home asks of any softener: compensated hardness, daily use, daily load, peak flow. */
@NullMarked
package io.github.brinewright.demand;

import org.jspecify.annotations.NullMarked;
