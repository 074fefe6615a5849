package io.github.brinewright.finding;

import io.github.brinewright.home.HardnessClass;
import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.TapIron;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.Optional;

/** What several rules ask of a water. A result below a limit counts as that limit at most. */
record WaterFacts(WaterAnalysis water) {
  /** Iron that stains, that needs a look at its form, and that a filter may leave. */
  static final double STAINING_IRON = 0.3;

  /** A pH below it is acid; above the other one scale and fittings call for a look. */
  static final double LOWEST_PH = 6.5;

  static final double HIGHEST_PH = 8.5;

  /** Free chlorine that wears a usual resin out early. */
  static final double MUCH_CHLORINE = 1;

  /** Hydrogen sulfide that is smelled in cold water. */
  static final double SMELLING_SULFIDE = 0.1;

  /** Turbidity in NTU that clogs a bed, and that a sediment filter is offered for. */
  private static final double CLOGGING = 5;

  static final double CLOUDY = 1;

  /** Standard deviations above homes of its size from which a use asks for a question. */
  static final double UNUSUAL_DEVIATIONS = 1.3;

  /** Far below what a laboratory tells apart; a difference that should be 0.3 may miss it so. */
  private static final double ROUNDING = 1e-9;

  private static final double MOST_IRON = 5;
  private static final double MOST_IRON_PER_GRAIN = 0.5;

  boolean well() {
    return water.source() == WaterSource.PRIVATE_WELL;
  }

  boolean tested(Substance substance) {
    return water.found(substance).isPresent();
  }

  boolean isAbove(Substance substance, double limit) {
    return above(substance, limit).isPresent();
  }

  /** Amount and limit when the amount exceeds it; empty also when it was not tested. */
  Optional<List<Figure>> above(Substance substance, double limit) {
    Concentration allowed = Concentration.ofMilligramsPerLitre(limit);
    return water
        .found(substance)
        .filter(found -> found.exceeds(allowed))
        .map(found -> List.of(Figure.of(found), Figure.of(allowed)));
  }

  /** The same from the limit itself on, which a result "below" that limit does not reach. */
  Optional<List<Figure>> from(Substance substance, double limit) {
    Concentration allowed = Concentration.ofMilligramsPerLitre(limit);
    return water
        .result(substance)
        .filter(
            result ->
                result.atMost().exceeds(allowed) || result.equals(LabResult.measured(allowed)))
        .map(result -> List.of(Figure.of(result.atMost()), Figure.of(allowed)));
  }

  /** More iron than a bed takes: 5 mg/L, or half a mg/L for each gpg of hardness. */
  Optional<List<Figure>> ironAboveBed() {
    double byHardness = MOST_IRON_PER_GRAIN * water.hardness().grainsPerGallon();
    return above(Substance.IRON, Math.min(MOST_IRON, byHardness));
  }

  boolean stainingIron() {
    return isAbove(Substance.IRON, STAINING_IRON);
  }

  /** Whether more than 0.3 mg/L of the iron comes as particles. */
  boolean ironParticles() {
    return water
        .found(Substance.DISSOLVED_IRON)
        .map(this::undissolved)
        .map(particles -> particles.milligramsPerLitre() > STAINING_IRON + ROUNDING)
        .orElse(stainingIron() && water.ironAtTap().filter(TapIron.CLOUDY::equals).isPresent());
  }

  private Concentration undissolved(Concentration dissolved) {
    return water.foundOrNone(Substance.IRON).minus(dissolved);
  }

  /** Whether there is iron that may be dissolved or not. */
  boolean ironOfUnknownForm() {
    return stainingIron() && !tested(Substance.DISSOLVED_IRON) && water.ironAtTap().isEmpty();
  }

  /** pH when it is below the limit. */
  Optional<List<Figure>> acid(double limit) {
    return water.ph().isPresent() && water.ph().getAsDouble() < limit
        ? Optional.of(List.of(Figure.of(water.ph().getAsDouble(), 1), Figure.of(limit, 1)))
        : Optional.empty();
  }

  /** Turbidity and limit where it would clog a bed and is not of iron. */
  Optional<List<Figure>> unexplainedTurbidity() {
    return stainingIron() ? Optional.empty() : turbidityAbove(CLOGGING);
  }

  boolean is(HardnessClass expected) {
    return HardnessClass.of(water.hardness()) == expected;
  }

  /** Turbidity and limit in NTU, when the turbidity exceeds it. */
  Optional<List<Figure>> turbidityAbove(double limit) {
    return water
        .turbidity()
        .filter(measured -> measured.ntu() > limit)
        .map(measured -> List.of(Figure.of(measured.ntu(), 1), Figure.of(limit, 0)));
  }
}
