/** Options side by side: feasible first, then cost, and the reason for each mark. */
@NullMarked
package io.github.brinewright.comparison;

import org.jspecify.annotations.NullMarked;
