/**
 * Tables of a job as spreadsheets (Office Open XML, ECMA-376): read in place of CSV files where
 * this module is at hand, and written from them.
 */
@NullMarked
package io.github.brinewright.xlsx;

import org.jspecify.annotations.NullMarked;
