package io.github.brinewright.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.job.BuiltInOffers;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.List;
import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** Rules of one's own, other severities and limits. */
class RuleBookTest {
  private static final Rule<HomeLoad> LARGE_HOUSEHOLD =
      OwnRule.of(
              "large-household",
              (HomeLoad home) -> {
                int people = home.site().household().people();
                return Rule.when(people > 6, Figure.of(people));
              })
          .severity(Severity.CAUTION)
          .words(Locale.ENGLISH, "With {0} people, ask for a second opinion.")
          .words(Locale.FRENCH, "À {0} personnes, demandez un second avis.")
          .build();

  private static final Rule<DesignRule.Subject> SMALL_BED =
      OwnRule.of(
              "bed-too-small-for-us",
              (DesignRule.Subject subject) ->
                  Rule.when(
                      subject.design().basis().resin().cubicFeet() < 1.5,
                      Figure.of(subject.design().basis().resin().cubicFeet(), 2)))
          .severity(Severity.STOP)
          .words(Locale.US, "We sell nothing of {0} ft³.")
          .build();

  private static Comparison compare(RuleBook rules, Limits limits, int people) {
    WaterAnalysis water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(12)).build();
    return PriceList.builder(BuiltInOffers.all(CurrencyUnit.USD))
        .rules(rules)
        .limits(limits)
        .build()
        .compare(
            Site.of("h", water, Household.of(people).build()).build(),
            Tariff.placeholder(CurrencyUnit.USD));
  }

  private static Comparison compare(RuleBook rules) {
    return compare(rules, Limits.USUAL, 3);
  }

  @Test
  void anOwnRuleOnTheHomeSpeaksItsOwnWordsInEachLanguage() {
    RuleBook rules = RuleBook.builder().home(LARGE_HOUSEHOLD).build();
    Finding finding = compare(rules, Limits.USUAL, 7).homeFinding(LARGE_HOUSEHOLD).orElseThrow();

    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
    assertThat(finding.source()).isEqualTo(Sources.DEALER);
    assertThat(finding.code()).isEqualTo("large-household");
    assertThat(Wording.of(Locale.US, UnitSystem.US).finding(finding))
        .isEqualTo("With 7 people, ask for a second opinion.");
    assertThat(Wording.of(Locale.CANADA_FRENCH, UnitSystem.METRIC).finding(finding))
        .isEqualTo("À 7 personnes, demandez un second avis.");
    assertThat(compare(rules, Limits.USUAL, 6).homeFinding(LARGE_HOUSEHOLD)).isEmpty();
  }

  @Test
  void aLanguageWithoutWordsIsRefusedAndNeverMixed() {
    Finding finding =
        compare(RuleBook.builder().home(LARGE_HOUSEHOLD).build(), Limits.USUAL, 7)
            .homeFinding(LARGE_HOUSEHOLD)
            .orElseThrow();
    Wording spanish = Wording.of(new Locale("es"), UnitSystem.METRIC);

    assertThatThrownBy(() -> spanish.finding(finding))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("finding.large-household");
  }

  @Test
  void anOwnRuleThatStopsTakesCandidatesOutOfTheChoice() {
    List<Candidate> candidates = compare(RuleBook.builder().design(SMALL_BED).build()).candidates();

    assertThat(candidates)
        .filteredOn(candidate -> candidate.resin().cubicFeet() < 1.5)
        .isNotEmpty()
        .noneMatch(Candidate::feasible)
        .allMatch(candidate -> candidate.finding(SMALL_BED).isPresent());
    assertThat(candidates).anyMatch(Candidate::feasible);
  }

  @Test
  void anotherSeverityDecidesAndSortsFirst() {
    RuleBook strict =
        RuleBook.builder().severity(DesignRule.EFFICIENCY_BELOW_RATING, Severity.STOP).build();
    Candidate usual = withFinding(compare(RuleBook.USUAL));
    Candidate barred = withFinding(compare(strict));

    assertThat(usual.finding(DesignRule.EFFICIENCY_BELOW_RATING).orElseThrow().severity())
        .isEqualTo(Severity.NOTE);
    assertThat(barred.feasible()).isFalse();
    assertThat(barred.findings().get(0).stops()).isTrue();
  }

  private static Candidate withFinding(Comparison comparison) {
    return comparison.candidates().stream()
        .filter(candidate -> candidate.finding(DesignRule.EFFICIENCY_BELOW_RATING).isPresent())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aRuleThatWasLeftOutIsSilent() {
    RuleBook without =
        RuleBook.builder()
            .without(DesignRule.EFFICIENCY_BELOW_RATING)
            .without(HomeRule.PH_UNKNOWN)
            .build();
    Comparison comparison = compare(without);

    assertThat(comparison.homeFinding(HomeRule.PH_UNKNOWN)).isEmpty();
    assertThat(compare(RuleBook.USUAL).homeFinding(HomeRule.PH_UNKNOWN)).isPresent();
    assertThat(comparison.candidates())
        .allMatch(candidate -> candidate.finding(DesignRule.EFFICIENCY_BELOW_RATING).isEmpty());
  }

  @Test
  void whatABedCannotDoIsNeverSold() {
    for (DesignRule rule :
        List.of(DesignRule.CAPACITY_BELOW_LOAD, DesignRule.NO_ROOM_FOR_RESERVE)) {
      assertThatThrownBy(() -> RuleBook.builder().without(rule))
          .hasMessageContaining(rule.code())
          .hasMessageContaining("cannot serve");
      assertThatThrownBy(() -> RuleBook.builder().severity(rule, Severity.NOTE))
          .hasMessageContaining("cannot serve");
    }
  }

  @Test
  void codesAreWellFormedAndUnique() {
    Rule<HomeLoad> twin = OwnRule.of("iron-stains", (HomeLoad home) -> Rule.when(true)).build();

    assertThatThrownBy(() -> RuleBook.builder().home(twin).build())
        .hasMessageContaining("two rules have the code iron-stains");
    for (String code : List.of("", "Iron", "iron stains", "1iron", "iron_stains")) {
      assertThatThrownBy(() -> OwnRule.of(code, (HomeLoad home) -> Rule.when(true)))
          .hasMessageContaining("\"" + code + "\"");
    }
    assertThatThrownBy(() -> RuleBook.builder().without(twin))
        .hasMessageContaining("not in this rule book");
  }

  @Test
  void aBuiltBookIsASnapshot() {
    RuleBook.Builder builder = RuleBook.builder();
    RuleBook before = builder.build();
    builder.home(LARGE_HOUSEHOLD);

    assertThat(before).isEqualTo(RuleBook.USUAL).hasSameHashCodeAs(RuleBook.USUAL);
    assertThat(builder.build()).isNotEqualTo(before);
    assertThat(builder.build().toBuilder().without(LARGE_HOUSEHOLD).build()).isEqualTo(before);
  }

  @Test
  void limitsOfPracticeMayBeSet() {
    Limits strict = Limits.builder().leastBedDepth(Length.ofInches(60)).build();

    assertThat(compare(RuleBook.USUAL, strict, 3).candidates())
        .anyMatch(candidate -> candidate.finding(DesignRule.BED_SHALLOW).isPresent());
    assertThat(compare(RuleBook.USUAL).candidates())
        .noneMatch(candidate -> candidate.finding(DesignRule.BED_SHALLOW).isPresent());
    assertThat(strict.toBuilder().build()).isEqualTo(strict);
  }
}
