package io.github.brinewright.finding;

import static io.github.brinewright.finding.VerdictKind.SOFT_ENOUGH;
import static io.github.brinewright.finding.VerdictKind.TEST_FIRST;
import static io.github.brinewright.finding.VerdictKind.TREAT_FIRST;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.BacteriaResult;
import io.github.brinewright.home.HardnessClass;
import io.github.brinewright.home.HardnessMethod;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The reasons of a {@link Verdict}, in its order. What is wrong is looked for in the raw water;
 * what is not known, and whether it is soft, in the water that enters the softener.
 */
public enum VerdictRule implements ReasonRule {
  /** A test found coliform bacteria. */
  BACTERIA_FOUND(
      TREAT_FIRST,
      Sources.COMMON_PRACTICE,
      site -> Rule.when(site.water().bacteria() == BacteriaResult.FOUND)),
  /** A test found Escherichia coli. */
  E_COLI_FOUND(
      TREAT_FIRST,
      Sources.COMMON_PRACTICE,
      site -> Rule.when(site.water().eColi() == BacteriaResult.FOUND)),
  /** Iron above 5 mg/L, or above half a mg/L for each gpg of hardness. */
  IRON_ABOVE_BED(TREAT_FIRST, Sources.COMMON_PRACTICE, site -> raw(site).ironAboveBed()),
  /** More than 0.3 mg/L of the iron comes as particles. */
  IRON_PARTICLES(
      TREAT_FIRST,
      Sources.COMMON_PRACTICE,
      site ->
          Rule.when(
              raw(site).ironParticles(),
              Figure.of(site.water().foundOrNone(Substance.IRON)),
              Figure.of(Concentration.ofMilligramsPerLitre(WaterFacts.STAINING_IRON)))),
  /** Iron bacteria or their slime were found. */
  IRON_BACTERIA_FOUND(
      TREAT_FIRST,
      Sources.COMMON_PRACTICE,
      site -> Rule.when(site.water().ironBacteria() == BacteriaResult.FOUND)),
  /** 0.1 mg/L of hydrogen sulfide or more in the cold water. */
  HYDROGEN_SULFIDE_IN_WATER(
      TREAT_FIRST,
      Sources.COMMON_PRACTICE,
      site -> raw(site).from(Substance.HYDROGEN_SULFIDE, WaterFacts.SMELLING_SULFIDE)),
  /** A pH below 6.5. */
  PH_TOO_LOW(TREAT_FIRST, Sources.COMMON_PRACTICE, site -> raw(site).acid(WaterFacts.LOWEST_PH)),
  /** Turbidity above 5 NTU, without iron that would explain it. */
  TURBIDITY_HIGH(TREAT_FIRST, Sources.COMMON_PRACTICE, site -> raw(site).unexplainedTurbidity()),
  /** The supply has no more than the 15 psi that must be left behind any softener. */
  PRESSURE_BELOW_ANY(TREAT_FIRST, Sources.COMMON_PRACTICE, VerdictRule::pressureBelowAny) {
    @Override
    public boolean answeredByTreatment() {
      return false;
    }
  },
  /** The water after the stated treatment would still be treated first. */
  TREATED_WATER_STILL_UNFIT(
      TREAT_FIRST, Sources.COMMON_PRACTICE, site -> Rule.when(stillUnfit(site))) {
    @Override
    public boolean answeredByTreatment() {
      return false;
    }
  },
  /** A private well was not tested for bacteria. */
  BACTERIA_NOT_TESTED(
      TEST_FIRST,
      Sources.COMMON_PRACTICE,
      site ->
          Rule.when(
              raw(site).well()
                  && site.water().bacteria() == BacteriaResult.NOT_DONE
                  && site.water().eColi() != BacteriaResult.FOUND)),
  /** A private well was not tested for nitrate. */
  NITRATE_NOT_TESTED(
      TEST_FIRST, Sources.COMMON_PRACTICE, site -> untestedWell(raw(site), Substance.NITRATE)),
  /** A private well was not tested for iron. */
  IRON_NOT_TESTED(
      TEST_FIRST, Sources.COMMON_PRACTICE, site -> untestedWell(entering(site), Substance.IRON)),
  /** A private well's pH is not known. */
  PH_NOT_TESTED(
      TEST_FIRST,
      Sources.COMMON_PRACTICE,
      site -> Rule.when(raw(site).well() && site.softenedWater().ph().isEmpty())),
  /** Iron above 0.3 mg/L may be dissolved or not. */
  IRON_FORM_UNKNOWN(
      TEST_FIRST,
      Sources.COMMON_PRACTICE,
      site ->
          Rule.when(
              raw(site).ironOfUnknownForm() && site.treated().flatMap(TreatedWater::iron).isEmpty(),
              Figure.of(site.water().foundOrNone(Substance.IRON)))),
  /** The hardness is an average of the utility. */
  HARDNESS_NOT_MEASURED(
      TEST_FIRST,
      Sources.COMMON_PRACTICE,
      site ->
          Rule.when(
              !site.water().hardnessMethod().map(HardnessMethod::measured).orElse(true),
              Figure.of(site.water().hardness()))),
  /** Iron above 0.3 mg/L, and manganese was not tested. */
  MANGANESE_NOT_TESTED(
      TEST_FIRST,
      Sources.COMMON_PRACTICE,
      site ->
          Rule.when(
              raw(site).stainingIron() && !entering(site).tested(Substance.MANGANESE),
              Figure.of(site.water().foundOrNone(Substance.IRON)))),
  /** At most 60 mg/L of hardness, and nobody asked for softer water. */
  HARDNESS_SOFT(
      SOFT_ENOUGH,
      Sources.USGS_CLASSES,
      site ->
          Rule.when(
              entering(site).is(HardnessClass.SOFT) && !site.softerWanted(),
              Figure.of(site.softenedWater().hardness()),
              Figure.of(Hardness.ofMilligramsPerLitre(60))));

  /** All of them in their order. */
  static final List<ReasonRule> RULES = List.of(values());

  private final VerdictKind kind;
  private final Source source;
  private final Function<Site, Optional<List<Figure>>> condition;

  VerdictRule(VerdictKind kind, Source source, Function<Site, Optional<List<Figure>>> condition) {
    this.kind = kind;
    this.source = source;
    this.condition = condition;
  }

  @Override
  public VerdictKind kind() {
    return kind;
  }

  @Override
  public String code() {
    return Rule.codeOf(this);
  }

  @Override
  public Severity severity() {
    return Severity.CAUTION;
  }

  @Override
  public Source source() {
    return source;
  }

  @Override
  public Optional<List<Figure>> lookAt(HomeLoad home) {
    return condition.apply(home.site());
  }

  private static WaterFacts raw(Site site) {
    return new WaterFacts(site.water());
  }

  private static WaterFacts entering(Site site) {
    return new WaterFacts(site.softenedWater());
  }

  private static Optional<List<Figure>> untestedWell(WaterFacts facts, Substance substance) {
    return Rule.when(facts.well() && !facts.tested(substance));
  }

  private static Optional<List<Figure>> pressureBelowAny(Site site) {
    return site.supply()
        .pressureInUse()
        .filter(pressure -> !pressure.exceeds(Limits.USUAL.leastPressure()))
        .map(pressure -> List.of(Figure.of(pressure), Figure.of(Limits.USUAL.leastPressure())));
  }

  private static boolean stillUnfit(Site site) {
    WaterFacts facts = entering(site);
    return site.treated().isPresent()
        && (facts.ironAboveBed().isPresent()
            || facts.ironParticles()
            || facts.acid(WaterFacts.LOWEST_PH).isPresent());
  }
}
