package io.github.brinewright.simulation;

/**
 * One simulated year of one bed.
 *
 * @param regenerations begun within the year
 * @param runOuts regenerations that came after the bed had run out
 * @param hardDays days on which hard water passed because the bed had run out
 * @param hardGallons that passed for that reason
 * @param cycleGallons that passed hard during regenerations
 * @param unusedGallons of capacity thrown away by regenerating early
 * @param softGallons that were softened
 * @param capacityGallons that the year's regenerations restored, and what was in the bed at its
 *     start less what was left at its end
 * @param longestGap days between regenerations
 */
record YearCounts(
    int regenerations,
    int runOuts,
    int hardDays,
    double hardGallons,
    double cycleGallons,
    double unusedGallons,
    double softGallons,
    double capacityGallons,
    int longestGap) {}
