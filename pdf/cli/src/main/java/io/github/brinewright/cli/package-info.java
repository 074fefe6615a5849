/** The command line. */
@NullMarked
package io.github.brinewright.cli;

import org.jspecify.annotations.NullMarked;
