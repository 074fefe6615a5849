package io.github.brinewright.treatment;

import io.github.brinewright.quantity.MolarMass;

/**
 * A mineral that carbon dioxide dissolves. Source: the reactions CaCO3 + CO2 + H2O → Ca(HCO3)2 and
 * MgO + 2 CO2 + H2O → Mg(HCO3)2 with standard atomic weights.
 */
public enum NeutralizerMineral {
  /** Calcium carbonate: 2.274 mg of hardness for each mg of carbon dioxide. */
  CALCITE(1),
  /** Magnesium oxide: 1.137 mg of hardness for each mg of carbon dioxide. */
  MAGNESIA(2);

  private final int carbonDioxide;

  NeutralizerMineral(int carbonDioxide) {
    this.carbonDioxide = carbonDioxide;
  }

  /**
   * {@return hardness and alkalinity as mg of CaCO3 that dissolve for each mg of carbon dioxide
   * consumed} Dimensionless. Formula: molar mass of CaCO3 ÷ (moles of carbon dioxide × its molar
   * mass). Example: calcite → 2.274. Source: the reaction.
   */
  public double hardnessPerCarbonDioxide() {
    return MolarMass.CALCIUM_CARBONATE / (carbonDioxide * MolarMass.CARBON_DIOXIDE);
  }
}
