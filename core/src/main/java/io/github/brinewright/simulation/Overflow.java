package io.github.brinewright.simulation;

/**
 * What a bed lacks in the mean interval.
 *
 * @param chance that it runs out
 * @param volume that passes hard for that reason, in mean days
 */
record Overflow(double chance, double volume) {}
