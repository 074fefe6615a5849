/** Reads a job folder of plain CSV files and reports every problem at once. */
@NullMarked
package io.github.brinewright.job;

import org.jspecify.annotations.NullMarked;
