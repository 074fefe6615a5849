package io.github.brinewright.study;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.TypicalYear;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.softener.Control;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What a year in the home says of the recommended candidate: the same bed and dosage under each
 * control and the same days, the best dosage, and whether the recommendation holds when things turn
 * out otherwise.
 *
 * @param candidate the recommended one
 * @param years simulated
 * @param controls what each control would do on this bed
 * @param typical one of the years, day by day
 * @param costs salt, water and sewer of a mean year under each control
 * @param changes what would be recommended after each change
 * @param dosage cost against dosage; empty when sized by a rating
 */
public record HomeStudy(
    Candidate candidate,
    int years,
    Map<Control, SimulatedYears> controls,
    TypicalYear typical,
    Map<Control, Money> costs,
    List<Sensitivity> changes,
    Optional<DosageStudy> dosage) {
  /** Years that a proposal simulates. */
  public static final int USUAL_YEARS = 400;

  /** Studies the recommended candidate; empty when there is none. */
  public static Optional<HomeStudy> of(PriceList comparer, Comparison comparison, int years) {
    return comparison.recommended().map(candidate -> of(comparer, comparison, candidate, years));
  }

  private static HomeStudy of(
      PriceList comparer, Comparison comparison, Candidate candidate, int years) {
    Sizer sizer = comparer.sizer(comparison.home());
    List<Design> designs = new ArrayList<>();
    for (Control control : Control.values()) {
      Design design =
          sizer.design(new Setup(candidate.softener(), candidate.design().basis(), control));
      if (design.schedule().feasible()) {
        designs.add(design);
      }
    }
    YearSimulation simulation =
        new YearSimulation(DemandModel.of(comparison.home()), years, YearSimulation.USUAL_SEED);
    List<SimulatedYears> outcomes = simulation.run(designs.stream().map(BedSettings::of).toList());
    Map<Control, SimulatedYears> controls = new EnumMap<>(Control.class);
    Map<Control, Money> costs = new EnumMap<>(Control.class);
    for (SimulatedYears outcome : outcomes) {
      Control control = outcome.bed().control();
      controls.put(control, outcome);
      costs.put(control, cost(outcome, candidate, comparison));
    }
    return new HomeStudy(
        candidate,
        years,
        controls,
        TypicalYear.of(simulation, outcomes, meterFor(candidate.setup().control())),
        costs,
        Sensitivity.of(comparer, comparison, candidate),
        DosageStudy.of(comparer, comparison, candidate));
  }

  private static Money cost(SimulatedYears outcome, Candidate candidate, Comparison comparison) {
    return comparison
        .tariff()
        .saltAndWater(
            candidate.design().basis().regenerant(),
            outcome.salt(),
            comparison.home().yearlyUse(),
            outcome.water());
  }

  /** The control of the recommended candidate. */
  public Control recommended() {
    return candidate.setup().control();
  }

  /**
   * The metered control to set beside a clock: the recommended one, or the one that waits for the
   * night. Empty when the bed is too small for a clock or a meter.
   */
  public Optional<Control> meter() {
    Control meter = meterFor(recommended());
    return controls.containsKey(meter) && controls.containsKey(Control.CLOCK)
        ? Optional.of(meter)
        : Optional.empty();
  }

  private static Control meterFor(Control recommended) {
    return recommended.metered() ? recommended : Control.METERED_AT_NIGHT;
  }

  /** What the meter saves a year against a clock on the same bed; negative when it costs more. */
  public Optional<Money> meterSaves() {
    return meter().map(meter -> costs.get(Control.CLOCK).minus(costs.get(meter)));
  }

  /** Simulates every candidate of a comparison that keeps every limit, on the same days. */
  public static Map<Candidate, SimulatedYears> ofAll(Comparison comparison, int years, long seed) {
    List<Candidate> feasible =
        comparison.candidates().stream().filter(Candidate::feasible).toList();
    List<SimulatedYears> outcomes =
        new YearSimulation(DemandModel.of(comparison.home()), years, seed)
            .run(feasible.stream().map(candidate -> BedSettings.of(candidate.design())).toList());
    Map<Candidate, SimulatedYears> all = new LinkedHashMap<>();
    for (int i = 0; i < feasible.size(); i++) {
      all.put(feasible.get(i), outcomes.get(i));
    }
    return all;
  }
}
