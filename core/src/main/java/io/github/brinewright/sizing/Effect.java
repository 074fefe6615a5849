package io.github.brinewright.sizing;

import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.quantity.WaterEfficiency;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.List;

/**
 * What softening adds to the water, and how well salt and water are used.
 *
 * <p>Sodium added = 7.864 mg/L for each gpg removed (2 × 22.990 ÷ 100.087 × 17.118), from hardness
 * alone: the allowance for iron is no exchange. Potassium: 13.37 mg/L for each gpg. Example: 10 gpg
 * → 78.6 mg/L of sodium. Efficiency = usable capacity ÷ the salt given, and regeneration water for
 * each 1,000 usable grains.
 */
public final class Effect implements Explained {
  private static final double SODIUM_PER_GPG = 7.864;
  private static final double POTASSIUM_PER_GPG = 13.37;
  private static final double EIGHT_OUNCES_IN_LITRES = 0.2366;
  private static final double DAY_IN_LITRES = 2;

  private final Hardness removed;
  private final CapacityBasis basis;
  private final BrineRefill refill;
  private final Cycle cycle;

  /**
   * @param removed hardness of the raw water
   * @param basis capacity between regenerations
   * @param refill salt given each time
   * @param cycle water taken each time
   */
  public Effect(Hardness removed, CapacityBasis basis, BrineRefill refill, Cycle cycle) {
    this.removed = removed;
    this.basis = basis;
    this.refill = refill;
    this.cycle = cycle;
  }

  /** Sodium that softening with sodium chloride adds; zero with potassium chloride. */
  public Concentration sodiumAdded() {
    return added(Regenerant.SODIUM_CHLORIDE, SODIUM_PER_GPG);
  }

  /** Potassium that softening with potassium chloride adds; zero with sodium chloride. */
  public Concentration potassiumAdded() {
    return added(Regenerant.POTASSIUM_CHLORIDE, POTASSIUM_PER_GPG);
  }

  private Concentration added(Regenerant by, double perGrain) {
    double grains = basis.regenerant() == by ? removed.grainsPerGallon() : 0;
    return Concentration.ofMilligramsPerLitre(perGrain * grains);
  }

  /** Milligrams of sodium that softening adds to an 8-ounce glass of water. */
  public double sodiumMilligramsPerGlass() {
    return sodiumAdded().milligramsPerLitre() * EIGHT_OUNCES_IN_LITRES;
  }

  /** Milligrams of sodium that softening adds to the 2 liters that a person may drink in a day. */
  public double sodiumMilligramsPerDay() {
    return sodiumAdded().milligramsPerLitre() * DAY_IN_LITRES;
  }

  /** Grains for each pound of salt given. */
  public SaltEfficiency saltEfficiency() {
    return refill.saltGiven().per(basis.usable());
  }

  /** Regeneration water for each 1,000 grains. */
  public WaterEfficiency waterEfficiency() {
    return WaterEfficiency.ofGallonsPerThousandGrains(
        1000 * cycle.water().gallons() / basis.usable().grains());
  }

  @Override
  public List<Step> steps() {
    boolean sodium = basis.regenerant() == Regenerant.SODIUM_CHLORIDE;
    return List.of(
        new Step(
            sodium ? StepKind.SODIUM_ADDED : StepKind.POTASSIUM_ADDED,
            List.of(Figure.of(sodium ? SODIUM_PER_GPG : POTASSIUM_PER_GPG, 3), Figure.of(removed)),
            Figure.of(sodium ? sodiumAdded() : potassiumAdded(), 0),
            Sources.STOICHIOMETRY),
        new Step(
            StepKind.SALT_EFFICIENCY,
            List.of(Figure.of(basis.usable()), Figure.of(refill.saltGiven())),
            Figure.of(saltEfficiency()),
            Sources.DEFINITION),
        new Step(
            StepKind.WATER_EFFICIENCY,
            List.of(Figure.of(cycle.water(), 1), Figure.of(basis.usable())),
            Figure.of(waterEfficiency()),
            Sources.DEFINITION));
  }
}
