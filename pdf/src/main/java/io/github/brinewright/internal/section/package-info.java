/** What each document says: one class for each section, which makes its model and draws nothing. */
@NullMarked
package io.github.brinewright.internal.section;

import org.jspecify.annotations.NullMarked;
