package io.github.brinewright.sizing;

import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.softener.CapacityBasis;
import java.util.Optional;

/**
 * When and how a setup regenerates; its parts agree.
 *
 * @param forecast empty where the schedule is not feasible
 */
record Regeneration(
    CapacityBasis basis,
    TankLoad tank,
    Capacity capacity,
    Schedule schedule,
    BrineRefill refill,
    Cycle cycle,
    Optional<ForecastYear> forecast) {}
