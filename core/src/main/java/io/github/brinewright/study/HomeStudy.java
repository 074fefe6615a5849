package io.github.brinewright.study;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.TypicalYear;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.softener.Control;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What a year in the home says of the recommended candidate: the same bed and dosage under each
 * control and the same days, the best dosage, and whether the recommendation holds when things turn
 * out otherwise. Immutable; equal when its parts are.
 *
 * <pre>{@code
 * HomeStudy.of(comparison, HomeStudy.USUAL_YEARS)
 *     .flatMap(HomeStudy::meterSaves)
 *     .ifPresent(saved -> show(saved));
 * }</pre>
 */
public final class HomeStudy {
  /** Years that a proposal simulates. */
  public static final int USUAL_YEARS = 400;

  private final Candidate candidate;
  private final int years;
  private final Map<Control, SimulatedYears> controls;
  private final TypicalYear typical;
  private final Map<Control, Money> costs;
  private final List<Sensitivity> changes;
  private final @Nullable DosageStudy dosage;

  private HomeStudy(Comparison comparison, Candidate candidate, YearSimulation simulation) {
    this.candidate = candidate;
    years = simulation.years();
    List<SimulatedYears> outcomes = simulation.run(beds(comparison, candidate));
    Map<Control, SimulatedYears> byControl = new EnumMap<>(Control.class);
    Map<Control, Money> costByControl = new EnumMap<>(Control.class);
    for (SimulatedYears outcome : outcomes) {
      Control control = outcome.bed().control();
      byControl.put(control, outcome);
      costByControl.put(control, cost(outcome, candidate, comparison));
    }
    controls = Collections.unmodifiableMap(byControl);
    costs = Collections.unmodifiableMap(costByControl);
    typical = TypicalYear.of(simulation, outcomes, meterFor(candidate.setup().control()));
    changes = Sensitivity.of(comparison, candidate);
    dosage = DosageStudy.of(comparison, candidate).orElse(null);
  }

  /**
   * Studies the recommended candidate in the usual use of the home; empty when there is none.
   *
   * @param comparison the candidates of the home
   * @param years 1 to 100,000
   * @return the study, or empty
   * @throws IllegalArgumentException outside that range
   */
  public static Optional<HomeStudy> of(Comparison comparison, int years) {
    return of(
        comparison,
        new YearSimulation(DemandModel.of(comparison.home()), years, YearSimulation.USUAL_SEED));
  }

  /**
   * Studies the recommended candidate; empty when there is none.
   *
   * @param comparison the candidates of the home
   * @param simulation with the use of the home, as one believes it to be
   * @return the study, or empty
   */
  public static Optional<HomeStudy> of(Comparison comparison, YearSimulation simulation) {
    return comparison
        .recommended()
        .map(candidate -> new HomeStudy(comparison, candidate, simulation));
  }

  /**
   * The bed of the candidate under every control that can serve the home with it; of the two kinds
   * of clock under one.
   */
  private static List<BedSettings> beds(Comparison comparison, Candidate candidate) {
    Sizer sizer = comparison.priceList().sizer(comparison.home());
    return Arrays.stream(Control.values())
        .filter(control -> Setup.fits(candidate.softener(), control))
        .filter(control -> control.metered() || control == clockFor(candidate))
        .map(control -> new Setup(candidate.softener(), candidate.setup().basis(), control))
        .map(sizer::design)
        .flatMap(design -> design.bed().stream())
        .toList();
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

  /** {@return the recommended candidate} */
  public Candidate candidate() {
    return candidate;
  }

  /** {@return how many years are simulated} */
  public int years() {
    return years;
  }

  /**
   * {@return what each control would do on this bed; without those that could not serve the home}
   */
  public Map<Control, SimulatedYears> controls() {
    return controls;
  }

  /** {@return one of the years, day by day} */
  public TypicalYear typical() {
    return typical;
  }

  /** {@return the cost of salt, water and sewer of a mean year under each control} */
  public Map<Control, Money> costs() {
    return costs;
  }

  /** {@return what would be recommended after each change} */
  public List<Sensitivity> changes() {
    return changes;
  }

  /** {@return how cost goes with dosage; empty when sized by a rating} */
  public Optional<DosageStudy> dosage() {
    return Optional.ofNullable(dosage);
  }

  /** {@return the control of the recommended candidate} */
  public Control recommended() {
    return candidate.setup().control();
  }

  /**
   * {@return the kind of clock that is simulated: the recommended one, or else one that the
   * softener is sold with; of fixed days where neither says}
   */
  public Control clock() {
    return clockFor(candidate);
  }

  private static Control clockFor(Candidate candidate) {
    Control recommended = candidate.setup().control();
    if (recommended.timed()) {
      return recommended;
    }
    Set<Control> sold = candidate.softener().controls();
    return sold.contains(Control.WEEKDAYS) && !sold.contains(Control.CLOCK)
        ? Control.WEEKDAYS
        : Control.CLOCK;
  }

  /**
   * {@return the metered control to set beside a clock: the recommended one, or the one that waits
   * for the night} Empty when the bed is too small for a clock or a meter.
   */
  public Optional<Control> meter() {
    Control meter = meterFor(recommended());
    return controls.containsKey(meter) && controls.containsKey(clock())
        ? Optional.of(meter)
        : Optional.empty();
  }

  private static Control meterFor(Control recommended) {
    return recommended.metered() ? recommended : Control.METERED_AT_NIGHT;
  }

  /**
   * {@return what the meter saves a year against a clock on the same bed; negative when it costs
   * more}
   */
  public Optional<Money> meterSaves() {
    return meter().map(meter -> costs.get(clock()).minus(costs.get(meter)));
  }

  /**
   * {@return what the meter saves and what drives it: the clock is set for full use, the meter
   * waits for what is used} Empty as {@link #meter()}.
   */
  public Optional<MeterSaving> meterSaving() {
    HomeLoad home = candidate.design().home();
    return meter()
        .map(
            meter ->
                new MeterSaving(
                    costs.get(clock()),
                    costs.get(meter),
                    home.softenedDesign(),
                    home.softenedExpected(),
                    controls.get(clock()).hardWater(),
                    controls.get(meter).hardWater()));
  }

  /**
   * {@return hard water of a mean year under each control, by cause, on the same days; without
   * those that could not serve the home}
   */
  public Map<Control, HardWater> hardWater() {
    Map<Control, HardWater> hard = new EnumMap<>(Control.class);
    controls.forEach((control, years) -> hard.put(control, years.hardWater()));
    return Collections.unmodifiableMap(hard);
  }

  /**
   * Simulates every candidate of a comparison that keeps every limit, on the same days, in the
   * order of the comparison.
   *
   * @param comparison the candidates of the home
   * @param years 1 to 100,000
   * @param seed of the random numbers
   * @return what was simulated, by candidate
   * @throws IllegalArgumentException outside that range
   */
  public static Map<Candidate, SimulatedYears> ofAll(Comparison comparison, int years, long seed) {
    List<Candidate> feasible =
        comparison.candidates().stream().filter(Candidate::feasible).toList();
    List<SimulatedYears> outcomes =
        new YearSimulation(DemandModel.of(comparison.home()), years, seed)
            .run(
                feasible.stream()
                    .map(candidate -> candidate.design().bed().orElseThrow())
                    .toList());
    Map<Candidate, SimulatedYears> all = new LinkedHashMap<>();
    for (int i = 0; i < feasible.size(); i++) {
      all.put(feasible.get(i), outcomes.get(i));
    }
    return all;
  }

  private List<Object> parts() {
    return List.of(candidate, controls, typical, changes, dosage());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HomeStudy study && parts().equals(study.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  @Override
  public String toString() {
    return "HomeStudy of " + candidate + " in " + years + " years: " + controls.values();
  }
}
