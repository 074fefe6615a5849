/** Turns figures, steps and findings into words for a locale; nothing below it formats anything. */
@NullMarked
package io.github.brinewright.words;

import org.jspecify.annotations.NullMarked;
