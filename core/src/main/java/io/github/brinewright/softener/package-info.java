/**
 * What a dealer stocks: softeners, resins with their capacity curves, vessels, brine tanks,
 * controls.
 *
 * <pre>{@code
 * Softener softener =
 *     Softener.withResin("S", Volume.ofCubicFeet(1.5))
 *         .dosages(List.of(SaltDosage.ofPoundsPerCubicFoot(6), SaltDosage.ofPoundsPerCubicFoot(9)))
 *         .controls(EnumSet.of(Control.CLOCK, Control.METERED_AT_NIGHT))
 *         .build();
 * }</pre>
 */
@NullMarked
package io.github.brinewright.softener;

import org.jspecify.annotations.NullMarked;
