/** One setting of one softener at one home, worked out in full. */
@NullMarked
package io.github.brinewright.sizing;

import org.jspecify.annotations.NullMarked;
