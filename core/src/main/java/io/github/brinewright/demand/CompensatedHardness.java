package io.github.brinewright.demand;

import io.github.brinewright.home.FoulingAllowances;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.List;

/**
 * Hardness with an allowance for iron and manganese, on which the bed is sized.
 *
 * <p>Formula: hardness + iron allowance × iron + manganese allowance × manganese. Example: 18 + 4 ×
 * 0.8 + 6 × 0.2 = 22.4 gpg. Source: common practice; the allowance is an input. A metal that was
 * not tested counts as none, and the missing test is a finding.
 */
public final class CompensatedHardness implements Explained {
  private final Hardness hardness;
  private final Concentration iron;
  private final Concentration manganese;
  private final FoulingAllowances allowances;

  /** Compensates the hardness of an analysis. */
  public CompensatedHardness(WaterAnalysis water, FoulingAllowances allowances) {
    hardness = water.hardness();
    iron = water.foundOrNone(Substance.IRON);
    manganese = water.foundOrNone(Substance.MANGANESE);
    this.allowances = allowances;
  }

  /** The hardness to size on. */
  public Hardness value() {
    return hardness
        .plus(allowances.iron().forConcentration(iron))
        .plus(allowances.manganese().forConcentration(manganese));
  }

  @Override
  public List<Step> steps() {
    List<Figure> inputs =
        List.of(
            Figure.of(hardness),
            Figure.of(allowances.iron()),
            Figure.of(iron),
            Figure.of(allowances.manganese()),
            Figure.of(manganese));
    return List.of(
        new Step(
            StepKind.COMPENSATED_HARDNESS, inputs, Figure.of(value()), Sources.FOULING_ALLOWANCE));
  }
}
