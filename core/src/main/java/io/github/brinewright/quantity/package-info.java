/**
 * Immutable physical quantities; the unit is in the name of every factory and accessor. A {@link
 * io.github.brinewright.quantity.Bounds} states the range that a value must lie in.
 *
 * <pre>{@code
 * HardnessAmount load = Hardness.ofGrainsPerGallon(18).in(Volume.ofGallons(225));
 * double grains = load.grains(); // 4,050
 * }</pre>
 */
@NullMarked
package io.github.brinewright.quantity;

import org.jspecify.annotations.NullMarked;
