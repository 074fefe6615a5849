/** How much softened water a household uses, on the design day and on an average day. */
@NullMarked
package io.github.brinewright.demand;

import org.jspecify.annotations.NullMarked;
