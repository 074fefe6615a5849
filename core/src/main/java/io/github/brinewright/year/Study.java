package io.github.brinewright.year;

import io.github.brinewright.comparison.Comparer;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Option;
import io.github.brinewright.regeneration.Control;
import io.github.brinewright.sizing.Candidate;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.Sizer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What a year in the home says of the recommended option: the same bed and dosage under each
 * control and the same days, the best dosage, and whether the recommendation holds when things turn
 * out otherwise.
 *
 * @param option the recommended one
 * @param years simulated
 * @param controls what each control would do on this bed
 * @param typical one of the years, day by day
 * @param costs salt, water and sewer of a mean year under each control
 * @param changes what would be recommended after each change
 * @param dosage cost against dosage; empty when sized by a rating
 */
public record Study(
    Option option,
    int years,
    Map<Control, Outcome> controls,
    TypicalYear typical,
    Map<Control, Money> costs,
    List<Sensitivity> changes,
    Optional<DosageStudy> dosage) {
  /** Years that a proposal simulates. */
  public static final int USUAL_YEARS = 400;

  /** Studies the recommended option; empty when there is none. */
  public static Optional<Study> of(Comparer comparer, Comparison comparison, int years) {
    return comparison.recommended().map(option -> of(comparer, comparison, option, years));
  }

  private static Study of(Comparer comparer, Comparison comparison, Option option, int years) {
    Sizer sizer = comparer.sizer(comparison.home());
    List<Design> designs = new ArrayList<>();
    for (Control control : Control.values()) {
      Design design = sizer.design(new Candidate(option.unit(), option.design().basis(), control));
      if (design.schedule().feasible()) {
        designs.add(design);
      }
    }
    YearSimulation simulation =
        new YearSimulation(DemandModel.of(comparison.home()), years, YearSimulation.USUAL_SEED);
    List<Outcome> outcomes = simulation.run(designs.stream().map(BedSettings::of).toList());
    Map<Control, Outcome> controls = new EnumMap<>(Control.class);
    Map<Control, Money> costs = new EnumMap<>(Control.class);
    for (Outcome outcome : outcomes) {
      Control control = outcome.bed().control();
      controls.put(control, outcome);
      costs.put(control, cost(outcome, option, comparison));
    }
    return new Study(
        option,
        years,
        controls,
        TypicalYear.of(simulation, outcomes, meterFor(option.candidate().control())),
        costs,
        Sensitivity.of(comparer, comparison, option),
        DosageStudy.of(comparer, comparison, option));
  }

  private static Money cost(Outcome outcome, Option option, Comparison comparison) {
    return comparison
        .tariff()
        .saltAndWater(
            option.design().basis().regenerant(),
            outcome.salt(),
            comparison.home().yearlyUse(),
            outcome.water());
  }

  /** The control of the recommended option. */
  public Control recommended() {
    return option.candidate().control();
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
    return recommended.metered() ? recommended : Control.METERED_DELAYED;
  }

  /** What the meter saves a year against a clock on the same bed; negative when it costs more. */
  public Optional<Money> meterSaves() {
    return meter().map(meter -> costs.get(Control.CLOCK).minus(costs.get(meter)));
  }

  /** Simulates every option of a comparison that keeps every limit, on the same days. */
  public static Map<Option, Outcome> ofAll(Comparison comparison, int years, long seed) {
    List<Option> feasible = comparison.options().stream().filter(Option::feasible).toList();
    List<Outcome> outcomes =
        new YearSimulation(DemandModel.of(comparison.home()), years, seed)
            .run(feasible.stream().map(option -> BedSettings.of(option.design())).toList());
    Map<Option, Outcome> all = new LinkedHashMap<>();
    for (int i = 0; i < feasible.size(); i++) {
      all.put(feasible.get(i), outcomes.get(i));
    }
    return all;
  }
}
