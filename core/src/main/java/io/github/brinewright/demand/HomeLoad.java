package io.github.brinewright.demand;

import io.github.brinewright.home.Site;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.CalendarYear;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a home asks of any softener, worked out once for all candidates.
 *
 * <p>Daily load = daily use × compensated hardness. Example: 225 gal × 22.4 gpg = 5,040 grains.
 * Source: product of the figures named.
 */
public final class HomeLoad implements Explained {
  /** Reckoned with where the water's temperature was not measured: common practice. */
  public static final Temperature USUAL_TEMPERATURE = Temperature.ofFahrenheit(50);

  private static final OptionalDouble USUAL_RULE = OptionalDouble.empty();

  private final Site site;
  private final DailyVariation variation;
  private final CompensatedHardness hardness;
  private final DailyUse use;
  private final Worked<Volume> softenedDesign;
  private final Worked<Volume> softenedExpected;
  private final Worked<HardnessAmount> dailyLoad;
  private final PeakFlow peak;

  /**
   * Works out the load of a home whose days vary as usual.
   *
   * @param site people, water and supply of the home
   */
  public HomeLoad(Site site) {
    this(site, DailyVariation.USUAL);
  }

  /**
   * Works out the load of a home.
   *
   * @param site people, water and supply of the home
   * @param variation how the use of a household's days strays about the mean; with more than 8
   *     people their coming and going is added
   */
  public HomeLoad(Site site, DailyVariation variation) {
    this(site, variation, USUAL_RULE);
  }

  private HomeLoad(Site site, DailyVariation variation, OptionalDouble designShare) {
    this.site = site;
    this.variation = Lodging.variation(variation, site.household().people());
    hardness = new CompensatedHardness(water(), site.allowances());
    use = new DailyUse(site.household(), this.variation, designShare);
    softenedDesign = softened(StepKind.SOFTENED_DESIGN, use.design());
    softenedExpected = softened(StepKind.SOFTENED_EXPECTED, use.expected());
    dailyLoad =
        Worked.of(
            StepKind.DAILY_LOAD,
            Sources.DEFINITION,
            softenedDesign(),
            compensatedHardness(),
            (volume, compensated) -> compensated.in(volume));
    peak = new PeakFlow(site.household(), blend());
  }

  /**
   * {@return the load of a home that is sized on the day which a share of its days stay below,
   * instead of the usual rule}
   *
   * @param site people, water and supply of the home
   * @param share 0.5 to 0.999; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public static HomeLoad coveringShare(Site site, double share) {
    return new HomeLoad(site, DailyVariation.USUAL, OptionalDouble.of(share));
  }

  private WaterAnalysis water() {
    return site.softenedWater();
  }

  private Worked<Volume> softened(StepKind kind, Volume daily) {
    return Worked.of(
        kind,
        Sources.HOT_SHARE,
        daily,
        site.household().softened().share(),
        water().hardness(),
        site.target(),
        (volume, share, raw, target) -> volume.times(share * blend(raw, target)));
  }

  private static double blend(Hardness raw, Hardness target) {
    return raw.minus(target).ratioTo(raw);
  }

  /** {@return the home} */
  public Site site() {
    return site;
  }

  /** {@return how the use of its days strays about the mean} */
  public DailyVariation variation() {
    return variation;
  }

  /** {@return the compensated hardness} */
  public Hardness compensatedHardness() {
    return hardness.value();
  }

  /** {@return the design and the expected use, with their bases} */
  public DailyUse use() {
    return use;
  }

  /**
   * {@return the share of the water that passes the bed when the rest is blended back to the
   * target; above 0 to 1, dimensionless}
   */
  public double blend() {
    return blend(water().hardness(), site.target());
  }

  /** {@return the share of the daily use that passes the bed; above 0 to 1, dimensionless} */
  public double softenedShare() {
    return site.household().softened().share() * blend();
  }

  private boolean softenedInPart() {
    return softenedShare() < 1;
  }

  /** {@return the water through the bed on the design day} */
  public Volume softenedDesign() {
    return softenedDesign.value();
  }

  /** {@return the water through the bed on an average day at home, without guests} */
  public Volume softenedExpected() {
    return softenedExpected.value();
  }

  /** {@return the hardness that the household gets rid of} */
  public Hardness removed() {
    return water().hardness().minus(site.target());
  }

  /**
   * {@return the hardness that the cold water at the kitchen tap gets rid of; none where hot water
   * alone is softened}
   */
  public Hardness removedFromColdWater() {
    return hotWaterOnly() ? Hardness.ofGrainsPerGallon(0) : removed();
  }

  private boolean hotWaterOnly() {
    return site.household().softened() == SoftenedShare.HOT_WATER;
  }

  /** {@return the load of the design day} */
  public HardnessAmount dailyLoad() {
    return dailyLoad.value();
  }

  /** {@return the load of an average day} */
  public HardnessAmount expectedLoad() {
    return compensatedHardness().in(softenedExpected());
  }

  /** {@return the use of a year of the whole home, with guests and days away} */
  public Volume yearlyUse() {
    return use.meanOfYear().times(CalendarYear.DAYS);
  }

  /** {@return the water through the bed in a year, with guests and days away} */
  public Volume softenedYear() {
    return yearlyUse().times(softenedShare());
  }

  /** {@return the peak flow of the home} */
  public FlowRate peakFlow() {
    return peak.value();
  }

  /** {@return the part of the peak flow that passes the bed} */
  public FlowRate peakThroughBed() {
    return peak.throughBed();
  }

  /** {@return how the peak flow was found} */
  public PeakFlow peak() {
    return peak;
  }

  /** {@return the temperature measured, or else the usual one; 33 to 120 °F} */
  public Temperature temperature() {
    return water().temperature().orElse(USUAL_TEMPERATURE);
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>(hardness.steps());
    steps.addAll(use.steps());
    if (softenedInPart()) {
      steps.add(softenedDesign.step());
      steps.add(softenedExpected.step());
    }
    steps.add(dailyLoad.step());
    steps.addAll(peak.steps());
    return steps;
  }
}
