/**
 * Regeneration control, interval, brine refill and the water each cycle step takes.
 *
 * <pre>{@code
 * BrineRefill refill =
 *     new BrineRefill(basis, FlowRate.ofGallonsPerMinute(0.5), Duration.ofSeconds(6));
 * Duration minutes = refill.set();
 * }</pre>
 */
@NullMarked
package io.github.brinewright.regeneration;

import org.jspecify.annotations.NullMarked;
