/**
 * Operating capacity of a resin against salt dosage, and the two ways to state a usable capacity.
 */
@NullMarked
package io.github.brinewright.resin;

import org.jspecify.annotations.NullMarked;
