/** One class for each part of a page of the proposal. */
@NullMarked
package io.github.brinewright.internal.section;

import org.jspecify.annotations.NullMarked;
