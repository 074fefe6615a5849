/**
 * Flow through the bed: water properties, pressure loss, backwash and service flow.
 *
 * <pre>{@code
 * PackedBed bed = new PackedBed(Length.ofFeet(2.5), Length.ofMillimetres(0.6), PackedBed.DENSE);
 * Pressure loss = bed.loss(velocity, Fluid.water(Temperature.ofFahrenheit(50)));
 * }</pre>
 */
@NullMarked
package io.github.brinewright.hydraulics;

import org.jspecify.annotations.NullMarked;
