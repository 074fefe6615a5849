package io.github.brinewright.demand;

import io.github.brinewright.home.FoulingAllowances;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;

/**
 * Hardness with an allowance for iron and manganese, on which the bed is sized.
 *
 * <p>Formula: hardness + iron allowance × iron + manganese allowance × manganese. Example: 18 + 4 ×
 * 0.8 + 6 × 0.2 = 22.4 gpg. Source: common practice; the allowance is an input. A metal that was
 * not tested counts as none, and the missing test is a finding.
 */
public final class CompensatedHardness implements Explained {
  private final Worked<Hardness> worked;

  /**
   * Compensates the hardness of an analysis.
   *
   * @param water what was found in the water
   * @param allowances hardness for each mg/L of iron and manganese
   */
  public CompensatedHardness(WaterAnalysis water, FoulingAllowances allowances) {
    worked =
        Worked.of(
            StepKind.COMPENSATED_HARDNESS,
            Sources.FOULING_ALLOWANCE,
            water.hardness(),
            allowances.iron(),
            water.foundOrNone(Substance.IRON),
            allowances.manganese(),
            water.foundOrNone(Substance.MANGANESE),
            (hardness, forIron, iron, forManganese, manganese) ->
                hardness
                    .plus(forIron.forConcentration(iron))
                    .plus(forManganese.forConcentration(manganese)));
  }

  /** {@return the hardness to size on} */
  public Hardness value() {
    return worked.value();
  }

  @Override
  public List<Step> steps() {
    return worked.steps();
  }
}
