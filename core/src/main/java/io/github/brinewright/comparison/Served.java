package io.github.brinewright.comparison;

import io.github.brinewright.finding.Limits;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.sizing.Design;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How well a design serves its home; nothing where its bed cannot serve it at all. */
record Served(List<MarginCheck> margins, @Nullable HardWaterYear year) {
  private static final Served NOT = new Served(List.of(), null);

  static Served of(Design design, Margins margins, Limits limits) {
    if (!design.schedule().feasible()) {
      return NOT;
    }
    HardWaterYear year = HardWaterYear.of(design);
    return new Served(MarginChecks.of(design, margins, limits, year), year);
  }

  Optional<HardWater> hardWater() {
    return Optional.ofNullable(year).map(HardWaterYear::mean);
  }
}
