/** What a candidate costs to buy, to run and over its life. */
@NullMarked
package io.github.brinewright.cost;

import org.jspecify.annotations.NullMarked;
