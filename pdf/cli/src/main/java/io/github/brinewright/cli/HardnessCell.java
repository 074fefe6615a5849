package io.github.brinewright.cli;

/**
 * A hardness as the cell of one of the two columns that take it.
 *
 * @param column of sites.csv
 * @param text of the cell
 */
record HardnessCell(String column, String text) {}
