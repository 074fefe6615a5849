/** Measures blocks, plans pages, then draws; no page is drawn before all are planned. */
@NullMarked
package io.github.brinewright.internal.layout;

import org.jspecify.annotations.NullMarked;
