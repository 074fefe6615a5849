/**
 * How a result was worked out: figures, steps, and the sources that state them. A {@link
 * io.github.brinewright.trace.Worked} value is computed from the very inputs that its step prints.
 *
 * <pre>{@code
 * for (Step step : design.steps()) {
 *   System.out.println(step.kind() + ": " + step.source().citation());
 * }
 * }</pre>
 */
@NullMarked
package io.github.brinewright.trace;

import org.jspecify.annotations.NullMarked;
