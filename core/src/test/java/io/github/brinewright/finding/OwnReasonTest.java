package io.github.brinewright.finding;

import static io.github.brinewright.finding.TriedHome.city;
import static io.github.brinewright.finding.TriedHome.mg;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Substance;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A dealer's own reason joins the verdict, with its words. */
class OwnReasonTest {
  private static final OwnRule<HomeLoad> SALTY =
      OwnRule.of("water-salty", OwnReasonTest::salty)
          .severity(Severity.CAUTION)
          .words(Locale.ENGLISH, "Chloride of {0} is much.")
          .build();
  private static final OwnReason REASON =
      OwnReason.of(VerdictKind.TREAT_FIRST, SALTY)
          .change(Locale.ENGLISH, "Desalt what is above {1}.");
  private static final RuleBook RULES = RuleBook.builder().reason(REASON).build();
  private static final HomeLoad SALTY_HOME = city(3).with(Substance.CHLORIDE, 1_500).home();

  private static Optional<List<Figure>> salty(HomeLoad home) {
    Concentration limit = mg(1_000);
    Concentration found = home.site().water().foundOrNone(Substance.CHLORIDE);
    return Rule.when(found.exceeds(limit), Figure.of(found, 0), Figure.of(limit, 0));
  }

  @Test
  void itDecidesWhereItIsTheGravest() {
    Verdict verdict = RULES.verdict(SALTY_HOME);

    assertThat(verdict.kind()).isEqualTo(VerdictKind.TREAT_FIRST);
    assertThat(verdict.reasons())
        .extracting(Finding::code)
        .containsExactly("water-salty", "hardness-soft");
    assertThat(Verdict.of(SALTY_HOME).kind()).isEqualTo(VerdictKind.SOFT_ENOUGH);
    assertThat(RULES.verdict(city(3).home()).reason(REASON)).isEmpty();
  }

  @Test
  void itSaysWhatItIsAndWhatWouldChangeIt() {
    Wording words = Wording.of(Locale.US, UnitSystem.US);
    Finding reason = RULES.verdict(SALTY_HOME).reason(REASON).orElseThrow();

    assertThat(words.finding(reason)).isEqualTo("Chloride of 1,500 mg/L is much.");
    assertThat(words.change(reason)).isEqualTo("Desalt what is above 1,000 mg/L.");
    assertThat(REASON.change(Locale.FRENCH)).isEmpty();
  }

  @Test
  void aShippedReasonCanBeLeftOut() {
    RuleBook without = RULES.toBuilder().without(VerdictRule.HARDNESS_SOFT).build();

    assertThat(without.verdict(city(3).home()).kind()).isEqualTo(VerdictKind.READY);
  }

  @Test
  void whatCannotBeAReasonIsRefused() {
    assertThatThrownBy(() -> OwnReason.of(VerdictKind.READY, SALTY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("water-salty asks for nothing");
    assertThatThrownBy(() -> REASON.change(Locale.ENGLISH, " "))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("write a sentence");
    assertThatThrownBy(() -> RULES.toBuilder().home(SALTY).build())
        .hasMessageContaining("two rules have the code water-salty");
    Wording words = Wording.of(Locale.US, UnitSystem.US);
    Finding note = RuleBook.USUAL.findings(city(6).home()).get(0);
    assertThatThrownBy(() -> words.change(note)).hasMessageContaining("no reason of a verdict");
  }

  @Test
  void equalReasonsAreEqual() {
    OwnReason same =
        OwnReason.of(VerdictKind.TREAT_FIRST, SALTY)
            .change(Locale.ENGLISH, "Desalt what is above {1}.");

    assertThat(REASON).isEqualTo(same).hasSameHashCodeAs(same).hasToString("water-salty");
    assertThat(REASON).isNotEqualTo(same.change(Locale.FRENCH, "Dessalez."));
  }
}
