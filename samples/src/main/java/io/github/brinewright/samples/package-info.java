/** Small programs that use the library and the proposal builder. */
@NullMarked
package io.github.brinewright.samples;

import org.jspecify.annotations.NullMarked;
