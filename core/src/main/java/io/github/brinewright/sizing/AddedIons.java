package io.github.brinewright.sizing;

import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;

/**
 * What softening adds to the water: two cations of the salt for each CaCO3 removed, from hardness
 * alone, since the allowance for iron is no exchange.
 *
 * <p>Sodium 7.864 mg/L, potassium 13.374 mg/L for each gpg (2 × 22.990 or 39.098 ÷ 100.087 ×
 * 17.118). Example: 10 gpg → 78.6 mg/L of sodium. Source: atomic weights.
 */
public final class AddedIons implements Explained {
  private static final double QUARTER = 4;
  private static final Volume GLASS = Volume.ofLitres(0.2366);
  private static final Volume DRUNK_IN_A_DAY = Volume.ofLitres(2);
  private static final Concentration NONE = Concentration.ofMilligramsPerLitre(0);

  private final Regenerant regenerant;
  private final Worked<Concentration> added;
  private final Concentration toDrink;

  /**
   * What a salt adds.
   *
   * @param removed hardness that is removed; zero or more
   * @param fromColdWater hardness that is removed from cold water; zero where hot water alone is
   *     softened
   * @param regenerant the salt
   */
  AddedIons(Hardness removed, Hardness fromColdWater, Regenerant regenerant) {
    this.regenerant = regenerant;
    boolean sodium = regenerant == Regenerant.SODIUM_CHLORIDE;
    added =
        Worked.of(
            sodium ? StepKind.SODIUM_ADDED : StepKind.POTASSIUM_ADDED,
            Sources.STOICHIOMETRY,
            regenerant.addedForOneGrain(),
            removed,
            (forOneGrain, hardness) -> forOneGrain.times(hardness.grainsPerGallon()));
    toDrink = regenerant.addedForOneGrain().times(fromColdWater.grainsPerGallon());
  }

  /** {@return the sodium that softening with sodium chloride adds; zero with potassium chloride} */
  public Concentration sodium() {
    return regenerant == Regenerant.SODIUM_CHLORIDE ? added.value() : NONE;
  }

  /**
   * {@return the potassium that softening with potassium chloride adds; zero with sodium chloride}
   */
  public Concentration potassium() {
    return regenerant == Regenerant.POTASSIUM_CHLORIDE ? added.value() : NONE;
  }

  /**
   * {@return the sodium that is added to the cold water, which is drunk; zero where hot water alone
   * is softened, or with potassium chloride}
   */
  public Concentration sodiumInColdWater() {
    return regenerant == Regenerant.SODIUM_CHLORIDE ? toDrink : NONE;
  }

  /** {@return the potassium that is added to the cold water; zero in the same way} */
  public Concentration potassiumInColdWater() {
    return regenerant == Regenerant.POTASSIUM_CHLORIDE ? toDrink : NONE;
  }

  /**
   * {@return the milligrams of sodium that softening adds to an 8-ounce glass (0.2366 L) of cold
   * water}
   */
  public double sodiumMilligramsPerGlass() {
    return sodiumInColdWater().milligramsPerLitre() * GLASS.litres();
  }

  /** {@return the milligrams of sodium that softening adds to a glass of 250 mL of cold water} */
  public double sodiumMilligramsPerQuarterLiter() {
    return sodiumInColdWater().milligramsPerLitre() / QUARTER;
  }

  /**
   * {@return the milligrams of sodium that softening adds to the 2 liters of cold water that a
   * person may drink in a day}
   */
  public double sodiumMilligramsPerDay() {
    return sodiumInColdWater().milligramsPerLitre() * DRUNK_IN_A_DAY.litres();
  }

  @Override
  public List<Step> steps() {
    return added.steps();
  }
}
