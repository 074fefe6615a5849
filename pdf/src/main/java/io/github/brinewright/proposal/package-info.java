/** Builds and writes proposals. */
@NullMarked
package io.github.brinewright.proposal;

import org.jspecify.annotations.NullMarked;
