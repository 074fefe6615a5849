package io.github.brinewright.service;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.study.HomeStudy;
import java.util.List;

/** The years of a home, the same days for every bed that they are asked for. */
final class HomeYears {
  private final YearSimulation simulation;

  HomeYears(HomeLoad home) {
    simulation =
        new YearSimulation(DemandModel.of(home), HomeStudy.USUAL_YEARS, YearSimulation.USUAL_SEED);
  }

  List<SimulatedYears> of(List<BedSettings> beds) {
    return simulation.run(beds);
  }

  SimulatedYears of(BedSettings bed) {
    return of(List.of(bed)).get(0);
  }
}
