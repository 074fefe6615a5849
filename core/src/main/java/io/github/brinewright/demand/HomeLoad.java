package io.github.brinewright.demand;

import io.github.brinewright.home.Site;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.ArrayList;
import java.util.List;

/**
 * What a home asks of any softener, worked out once for all candidates.
 *
 * <p>Daily load = daily use × compensated hardness. Example: 225 gal × 22.4 gpg = 5,040 grains.
 */
public final class HomeLoad implements Explained {
  /** Reckoned with where the water's temperature was not measured: common practice. */
  public static final Temperature USUAL_TEMPERATURE = Temperature.ofFahrenheit(50);

  private final Site site;
  private final CompensatedHardness hardness;
  private final DailyUse use;
  private final PeakFlow peak;

  /** Works out the load of a home. */
  public HomeLoad(Site site) {
    this.site = site;
    hardness = new CompensatedHardness(site.water(), site.allowances());
    use = new DailyUse(site.household());
    peak = new PeakFlow(site.household());
  }

  /** The home. */
  public Site site() {
    return site;
  }

  /** Compensated hardness. */
  public Hardness compensatedHardness() {
    return hardness.value();
  }

  /** Design and expected use, with their bases. */
  public DailyUse use() {
    return use;
  }

  /** Share of the water that passes the bed when the rest is blended back to the target. */
  public double blend() {
    Hardness raw = site.water().hardness();
    return raw.minus(site.target()).ratioTo(raw);
  }

  private double softenedShare() {
    return site.household().softened().share() * blend();
  }

  /** Water through the bed on the design day. */
  public Volume softenedDesign() {
    return use.design().times(softenedShare());
  }

  /** Water through the bed on an average day. */
  public Volume softenedExpected() {
    return use.expected().times(softenedShare());
  }

  /** Hardness that the household gets rid of. */
  public Hardness removed() {
    return site.water().hardness().minus(site.target());
  }

  /** Load of the design day. */
  public HardnessAmount dailyLoad() {
    return hardness.value().in(softenedDesign());
  }

  /** Load of an average day. */
  public HardnessAmount expectedLoad() {
    return hardness.value().in(softenedExpected());
  }

  /** Expected use of a year. */
  public Volume yearlyUse() {
    return use.expected().times(365);
  }

  /** Peak flow of the home, all of which the bed must be able to pass. */
  public FlowRate peakFlow() {
    return peak.value();
  }

  /** How the peak flow was found. */
  public PeakFlow peak() {
    return peak;
  }

  /** Temperature measured, or else the usual one. */
  public Temperature temperature() {
    return site.water().temperature().orElse(USUAL_TEMPERATURE);
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>(hardness.steps());
    steps.addAll(use.steps());
    if (softenedShare() < 1) {
      steps.add(softened(StepKind.SOFTENED_DESIGN, use.design(), softenedDesign()));
      steps.add(softened(StepKind.SOFTENED_EXPECTED, use.expected(), softenedExpected()));
    }
    steps.add(
        new Step(
            StepKind.DAILY_LOAD,
            List.of(Figure.of(softenedDesign()), Figure.of(compensatedHardness())),
            Figure.of(dailyLoad()),
            Sources.DEFINITION));
    steps.addAll(peak.steps());
    return steps;
  }

  private Step softened(StepKind kind, Volume use, Volume result) {
    return new Step(
        kind,
        List.of(
            Figure.of(use),
            Figure.of(site.household().softened().share(), 2),
            Figure.of(site.water().hardness()),
            Figure.of(site.target())),
        Figure.of(result),
        Sources.HOT_SHARE);
  }
}
