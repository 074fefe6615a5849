/**
 * What stands before the softener: what each treatment takes from the water and what it leaves, and
 * the water on its way through several of them.
 */
@NullMarked
package io.github.brinewright.treatment;

import org.jspecify.annotations.NullMarked;
