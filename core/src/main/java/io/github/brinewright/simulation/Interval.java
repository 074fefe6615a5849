package io.github.brinewright.simulation;

/**
 * From one regeneration of a metered bed to the next, in the mean; volumes in mean days.
 *
 * @param days that it lasts
 * @param runOutChance chance that the bed runs out in it, then on its last day
 * @param runOut volume that passes hard for that reason
 * @param cycle volume that passes hard during its regeneration
 */
record Interval(double days, double runOutChance, double runOut, double cycle) {}
