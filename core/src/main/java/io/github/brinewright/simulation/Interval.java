package io.github.brinewright.simulation;

/**
 * From one regeneration of a metered bed to the next, in the mean; volumes in mean days.
 *
 * @param days that it lasts
 * @param runOutChance chance that the bed runs out in it
 * @param runOutDays on which the bed has run out; the chance where that can be its last day only
 * @param runOut volume that passes hard for that reason
 * @param cycle volume that passes hard during its regeneration
 */
record Interval(double days, double runOutChance, double runOutDays, double runOut, double cycle) {}
