/** Where a figure comes from: citations and their standing. */
@NullMarked
package io.github.brinewright.source;

import org.jspecify.annotations.NullMarked;
