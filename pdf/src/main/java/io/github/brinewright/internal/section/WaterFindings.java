package io.github.brinewright.internal.section;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.HomeRule;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.home.FoulingAllowances;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What the analysis found, and what each finding means for a softener.
 *
 * @param home with its analysis
 * @param findings on the home
 */
record WaterFindings(HomeLoad home, List<Finding> findings) {
  /** What the rows speak of, or what goes without saying. */
  private static final Set<HomeRule> SAID =
      EnumSet.of(
          HomeRule.IRON_STAINS,
          HomeRule.MANGANESE_STAINS,
          HomeRule.PH_NOT_TESTED,
          HomeRule.SOLIDS_NOT_TESTED,
          HomeRule.WATER_COLD,
          HomeRule.TEMPERATURE_NOT_MEASURED);

  Rows rows() {
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.of("water.hardness", Figure.of(water().hardness()))
            .noting(
                Phrase.text(
                    "water.hardnessMeaning", Phrase.of(Figure.of(home.compensatedHardness())))));
    for (Substance substance : Substance.values()) {
      rows.add(row(substance));
    }
    rows.add(acidity());
    rows.add(temperature());
    rows.add(
        Row.of("water.bacteria", Phrase.of(water().bacteria()))
            .noting(said(HomeRule.BACTERIA_FOUND, HomeRule.BACTERIA_NOT_TESTED)));
    return new Rows(
        "water",
        List.of(
            Phrase.text("water.test"), Phrase.text("water.found"), Phrase.text("water.meaning")),
        rows);
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

  private Row row(Substance substance) {
    Phrase found =
        water()
            .found(substance)
            .map(amount -> Phrase.of(Figure.of(amount, decimals(substance))))
            .orElse(Phrase.text("water.notTested"));
    Phrase meaning = new Phrase.Joined(List.of(said(rules(substance)), counted(substance)), " ");
    boolean tested = water().found(substance).isPresent();
    return Row.of(substance, found)
        .noting(meaning.isEmpty() && tested ? Phrase.text("water.fine") : meaning);
  }

  private static int decimals(Substance substance) {
    return switch (substance) {
      case TOTAL_DISSOLVED_SOLIDS, SODIUM, CHLORIDE, ALKALINITY, CARBON_DIOXIDE -> 0;
      case IRON, DISSOLVED_IRON, MANGANESE -> 2;
      case FREE_CHLORINE, HYDROGEN_SULFIDE, CHLORAMINE, NITRATE -> 1;
    };
  }

  private static HomeRule[] rules(Substance substance) {
    return switch (substance) {
      case IRON ->
          new HomeRule[] {HomeRule.IRON_ABOVE_BED, HomeRule.IRON_STAINS, HomeRule.IRON_NOT_TESTED};
      case DISSOLVED_IRON -> new HomeRule[] {HomeRule.IRON_OXIDISED};
      case MANGANESE -> new HomeRule[] {HomeRule.MANGANESE_STAINS, HomeRule.MANGANESE_NOT_TESTED};
      case TOTAL_DISSOLVED_SOLIDS -> new HomeRule[] {HomeRule.SOLIDS_HIGH};
      case FREE_CHLORINE -> new HomeRule[] {HomeRule.CHLORINE_HARMS_RESIN};
      case HYDROGEN_SULFIDE -> new HomeRule[] {HomeRule.HYDROGEN_SULFIDE_PRESENT};
      case SODIUM, CHLORIDE, CHLORAMINE, ALKALINITY, CARBON_DIOXIDE, NITRATE -> new HomeRule[0];
    };
  }

  /** The first finding of some rules. */
  private Phrase said(HomeRule... rules) {
    return findings.stream()
        .filter(
            finding -> Arrays.stream(rules).anyMatch(rule -> rule.code().equals(finding.code())))
        .findFirst()
        .<Phrase>map(Phrase.Found::new)
        .orElse(Phrase.NONE);
  }

  /** The hardness that a substance counts as, where it counts. */
  private Phrase counted(Substance substance) {
    FoulingAllowances allowances = home.site().allowances();
    return switch (substance) {
      case IRON -> counted(allowances.iron().forConcentration(water().foundOrNone(substance)));
      case MANGANESE ->
          counted(allowances.manganese().forConcentration(water().foundOrNone(substance)));
      default -> Phrase.NONE;
    };
  }

  private static Phrase counted(Hardness added) {
    return added.isPositive()
        ? Phrase.text("water.counted", Phrase.of(Figure.of(added)))
        : Phrase.NONE;
  }

  private Row acidity() {
    if (water().ph().isEmpty()) {
      return Row.of("water.ph", Phrase.text("water.notTested"));
    }
    Phrase outside = said(HomeRule.PH_OUTSIDE);
    return Row.of("water.ph", Figure.of(water().ph().getAsDouble(), 1))
        .noting(outside.isEmpty() ? Phrase.text("water.phFine") : outside);
  }

  private Row temperature() {
    Phrase found =
        water()
            .temperature()
            .map(measured -> Phrase.of(Figure.of(measured)))
            .orElse(Phrase.text("water.notTested"));
    Phrase cold = said(HomeRule.WATER_COLD, HomeRule.TEMPERATURE_NOT_MEASURED);
    return Row.of("water.temperature", found)
        .noting(cold.isEmpty() ? Phrase.text("water.temperatureFine") : cold);
  }
}
