package io.github.brinewright.words;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.comparison.Grade;
import io.github.brinewright.comparison.Margin;
import io.github.brinewright.comparison.Mark;
import io.github.brinewright.comparison.Reason;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.finding.DesignRule;
import io.github.brinewright.finding.HomeRule;
import io.github.brinewright.finding.Rule;
import io.github.brinewright.finding.VerdictKind;
import io.github.brinewright.finding.VerdictRule;
import io.github.brinewright.home.Substance;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Standing;
import io.github.brinewright.trace.StepKind;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MessagesTest {
  private final Messages messages = new Messages(Locale.US, UnitSystem.US, List.of());

  @Test
  void everyRuleStepReasonAndCautionHasItsWords() {
    List<String> keys = new ArrayList<>();
    Stream.<Rule<?>>concat(Arrays.stream(HomeRule.values()), Arrays.stream(DesignRule.values()))
        .forEach(rule -> keys.add("finding." + rule.code()));
    for (VerdictRule rule : VerdictRule.values()) {
      keys.addAll(List.of("finding." + rule.code(), "finding." + rule.code() + ".change"));
    }
    for (StepKind kind : StepKind.values()) {
      keys.addAll(
          List.of(
              "step." + kind + ".name",
              "step." + kind + ".formula",
              "step." + kind + ".numbers",
              "step." + kind + ".result"));
    }
    Arrays.stream(Reason.Kind.values()).forEach(kind -> keys.add("reason." + kind));
    Arrays.stream(Margin.values()).forEach(margin -> keys.add("margin." + margin.code()));
    Arrays.stream(Caution.values()).forEach(caution -> keys.add("caution." + caution));

    assertThat(keys).allSatisfy(key -> assertThat(messages.get(key)).isNotBlank());
  }

  @Test
  void everyTermHasItsName() {
    Wording words = Wording.of(Locale.US, UnitSystem.US);
    Stream.<Enum<?>[]>of(
            Control.values(),
            Substance.values(),
            CostKind.values(),
            Standing.values(),
            Margin.values(),
            Grade.values(),
            Mark.values(),
            VerdictKind.values())
        .flatMap(Arrays::stream)
        .forEach(term -> assertThat(words.term(term)).isNotBlank());
  }

  @Test
  void anUnknownKeyIsNamed() {
    assertThatThrownBy(() -> messages.get("no.such.key"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no.such.key");
  }

  @Test
  void bracesInAValueAreLeftAlone() {
    assertThat(Messages.fill("{1} and {0}", List.of("{1}", "b"))).isEqualTo("b and {1}");
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "de-DE", "fr-FR", "sv-SE", "tr-TR"})
  void numbersFollowTheLocaleNotTheMachine(String tag) {
    Locale machine = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      Locale locale = Locale.forLanguageTag(tag);
      Texts own = Texts.of(locale, Texts.library().in(Locale.US));
      Wording words = Wording.of(locale, UnitSystem.US, own);
      String comma = tag.equals("en-US") ? "." : ",";
      assertThat(words.figure(Figure.of(Mass.ofPounds(7.68)))).isEqualTo("7" + comma + "68 lb");
      assertThat(words.term(Control.CLOCK)).isEqualTo("clock");
    } finally {
      Locale.setDefault(machine);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "en-US, Monday, Monday and Thursday, 'Monday, Wednesday and Friday', every day",
    "es-US, lunes, lunes y jueves, 'lunes, miércoles y viernes', todos los días",
    "fr-CA, lundi, lundi et jeudi, 'lundi, mercredi et vendredi', tous les jours"
  })
  void weekdaysAreListedInTheirOrder(String tag, String one, String two, String three, String all) {
    Wording words = Wording.of(Locale.forLanguageTag(tag), UnitSystem.US);

    assertThat(words.weekdays(Set.of(MONDAY))).isEqualTo(one);
    assertThat(words.weekdays(new LinkedHashSet<>(List.of(THURSDAY, MONDAY)))).isEqualTo(two);
    assertThat(words.figure(Figure.of(Set.of(FRIDAY, MONDAY, WEDNESDAY)))).isEqualTo(three);
    assertThat(words.weekdays(EnumSet.allOf(DayOfWeek.class))).isEqualTo(all);
    assertThatThrownBy(() -> words.weekdays(Set.of())).hasMessageContaining("weekdays");
  }

  @Test
  void metricReadersGetMetricUnits() {
    Wording words = Wording.of(Locale.US, UnitSystem.METRIC);
    assertThat(words.figure(Figure.of(Volume.ofGallons(100)))).isEqualTo("379 L");
  }
}
