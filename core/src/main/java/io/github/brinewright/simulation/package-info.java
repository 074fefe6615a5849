/**
 * A home's year day by day: the same drawn days through any bed and control.
 *
 * <pre>{@code
 * YearSimulation simulation = new YearSimulation(DemandModel.of(home), 400, 1);
 * SimulatedYears years = simulation.run(List.of(design.bed().orElseThrow())).get(0);
 * double regenerations = years.regenerations().mean();
 * }</pre>
 */
@NullMarked
package io.github.brinewright.simulation;

import org.jspecify.annotations.NullMarked;
