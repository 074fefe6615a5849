package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.HomeRule;
import io.github.brinewright.finding.Rule;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.finding.VerdictRule;
import io.github.brinewright.home.FoulingAllowances;
import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the analysis found, and what each finding means for a softener.
 *
 * @param home with its analysis
 * @param findings on the home, reasons of the verdict first
 * @param sized whether a softener is sized for it
 */
record WaterFindings(HomeLoad home, List<Finding> findings, boolean sized) {
  /** Reasons of the verdict, and what else was found. */
  static WaterFindings of(Subject subject) {
    Comparison comparison = subject.comparison();
    List<Finding> all = new ArrayList<>(comparison.verdict().reasons());
    all.addAll(comparison.homeFindings());
    return new WaterFindings(comparison.home(), all, subject.showsOptions());
  }

  private static final Set<Substance> SELDOM_TESTED =
      EnumSet.of(
          Substance.CHLORAMINE, Substance.ALKALINITY, Substance.CARBON_DIOXIDE, Substance.NITRATE);

  /** What the rows speak of, or what goes without saying. */
  private static final Set<HomeRule> SAID =
      EnumSet.of(
          HomeRule.IRON_STAINS,
          HomeRule.MANGANESE_STAINS,
          HomeRule.CHLORINE_PRESENT,
          HomeRule.CHLORAMINE_PRESENT,
          HomeRule.HYDROGEN_SULFIDE_LITTLE,
          HomeRule.PH_UNKNOWN,
          HomeRule.SOLIDS_NOT_TESTED,
          HomeRule.WATER_COLD,
          HomeRule.TEMPERATURE_NOT_MEASURED);

  Rows rows() {
    List<Row> rows = new ArrayList<>();
    rows.addAll(hardness());
    Arrays.stream(Substance.values()).map(this::row).flatMap(Optional::stream).forEach(rows::add);
    rows.add(acidity());
    rows.add(temperature());
    rows.add(
        Row.of("water.bacteria", Phrase.of(water().bacteria()))
            .noting(
                said(
                    List.of(
                        VerdictRule.E_COLI_FOUND,
                        VerdictRule.BACTERIA_FOUND,
                        VerdictRule.BACTERIA_NOT_TESTED))));
    return new Rows(
        "water",
        List.of(
            Phrase.text("water.test"), Phrase.text("water.found"), Phrase.text("water.meaning")),
        rows);
  }

  /** As tested and, where a treatment is stated, behind it. */
  private List<Row> hardness() {
    Phrase meaning =
        sized
            ? Phrase.text("water.hardnessMeaning", Phrase.of(Figure.of(home.compensatedHardness())))
            : Phrase.NONE;
    Row tested = Row.of("water.hardness", Figure.of(water().hardness()));
    return home.site()
        .treated()
        .map(
            treated ->
                List.of(
                    tested,
                    (treated.isComputed()
                            ? Row.of("water.planned", Figure.of(treated.hardness()))
                            : Row.of("water.treated", TreatedAs.stated(home.site())))
                        .noting(meaning)))
        .orElseGet(() -> List.of(tested.noting(meaning)));
  }

  /** Notes on the home that no row speaks of. */
  List<Phrase> more() {
    return findings.stream()
        .filter(finding -> finding.severity() == Severity.NOTE)
        .filter(finding -> SAID.stream().noneMatch(rule -> rule.code().equals(finding.code())))
        .<Phrase>map(Phrase.Found::new)
        .toList();
  }

  private WaterAnalysis water() {
    return home.site().water();
  }

  /** Empty for what is seldom tested, where it was not and nothing is said of it. */
  private Optional<Row> row(Substance substance) {
    Phrase meaning = new Phrase.Joined(List.of(said(rules(substance)), counted(substance)), " ");
    Optional<LabResult> result = water().result(substance);
    if (result.isEmpty() && meaning.isEmpty() && SELDOM_TESTED.contains(substance)) {
      return Optional.empty();
    }
    Phrase found =
        result
            .map(each -> TreatedAs.result(each, decimals(substance)))
            .orElse(Phrase.text("water.notTested"));
    return Optional.of(
        Row.of(substance, found)
            .noting(meaning.isEmpty() && result.isPresent() ? Phrase.text("water.fine") : meaning));
  }

  private static int decimals(Substance substance) {
    return switch (substance) {
      case TOTAL_DISSOLVED_SOLIDS, SODIUM, CHLORIDE, ALKALINITY, CARBON_DIOXIDE -> 0;
      case IRON, DISSOLVED_IRON, MANGANESE -> 2;
      case FREE_CHLORINE, HYDROGEN_SULFIDE, CHLORAMINE, NITRATE -> 1;
    };
  }

  private static List<Rule<HomeLoad>> rules(Substance substance) {
    return switch (substance) {
      case IRON ->
          List.of(
              VerdictRule.IRON_ABOVE_BED,
              VerdictRule.IRON_FORM_UNKNOWN,
              HomeRule.IRON_STAINS,
              HomeRule.IRON_ABOVE_OBJECTIVE,
              VerdictRule.IRON_NOT_TESTED);
      case DISSOLVED_IRON -> List.of(VerdictRule.IRON_PARTICLES);
      case MANGANESE ->
          List.of(
              HomeRule.MANGANESE_ABOVE_ADVISORY,
              HomeRule.MANGANESE_ABOVE_GUIDELINE,
              HomeRule.MANGANESE_STAINS,
              VerdictRule.MANGANESE_NOT_TESTED,
              HomeRule.MANGANESE_UNKNOWN);
      case TOTAL_DISSOLVED_SOLIDS -> List.of(HomeRule.SOLIDS_HIGH);
      case FREE_CHLORINE -> List.of(HomeRule.CHLORINE_WEARS_RESIN, HomeRule.CHLORINE_PRESENT);
      case CHLORAMINE -> List.of(HomeRule.CHLORAMINE_PRESENT);
      case HYDROGEN_SULFIDE ->
          List.of(VerdictRule.HYDROGEN_SULFIDE_IN_WATER, HomeRule.HYDROGEN_SULFIDE_LITTLE);
      case NITRATE -> List.of(HomeRule.NITRATE_HIGH, VerdictRule.NITRATE_NOT_TESTED);
      case SODIUM, CHLORIDE, ALKALINITY, CARBON_DIOXIDE -> List.of();
    };
  }

  /** The first finding of some rules. */
  private Phrase said(List<Rule<HomeLoad>> rules) {
    return findings.stream()
        .filter(finding -> rules.stream().anyMatch(finding::isOf))
        .findFirst()
        .<Phrase>map(Phrase.Found::new)
        .orElse(Phrase.NONE);
  }

  /** The hardness that a substance counts as, where it counts. */
  private Phrase counted(Substance substance) {
    FoulingAllowances allowances = home.site().allowances();
    return switch (substance) {
      case IRON -> counted(allowances.iron().forConcentration(entering(substance)));
      case MANGANESE -> counted(allowances.manganese().forConcentration(entering(substance)));
      default -> Phrase.NONE;
    };
  }

  /** What of it reaches the softener. */
  private Concentration entering(Substance substance) {
    return home.site().softenedWater().foundOrNone(substance);
  }

  private Phrase counted(Hardness added) {
    return sized && added.isPositive()
        ? Phrase.text("water.counted", Phrase.of(Figure.of(added)))
        : Phrase.NONE;
  }

  private Row acidity() {
    Phrase outside =
        said(List.of(VerdictRule.PH_TOO_LOW, VerdictRule.PH_NOT_TESTED, HomeRule.PH_HIGH));
    if (water().ph().isEmpty()) {
      return Row.of("water.ph", Phrase.text("water.notTested")).noting(outside);
    }
    return Row.of("water.ph", Figure.of(water().ph().getAsDouble(), 1))
        .noting(outside.isEmpty() ? Phrase.text("water.phFine") : outside);
  }

  private Row temperature() {
    Phrase found =
        water()
            .temperature()
            .map(measured -> Phrase.of(Figure.of(measured)))
            .orElse(Phrase.text("water.notTested"));
    Phrase cold = said(List.of(HomeRule.WATER_COLD, HomeRule.TEMPERATURE_NOT_MEASURED));
    return Row.of("water.temperature", found)
        .noting(cold.isEmpty() ? Phrase.text("water.temperatureFine") : cold);
  }
}
