package io.github.brinewright.chance;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Job;
import io.github.brinewright.proposal.DocumentTexts;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.Payback;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.joda.money.Money;

/**
 * What page one says of the softener that is in the house, held against the study of it: figures,
 * claims by the patterns of their sentences, and years until a price has come back.
 */
final class PresentProof {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 1);
  private static final double LEVEL = 1.02;
  private static final List<String> OVER_THE_YEARS =
      List.of("now.dearer", "now.level", "now.cheaper", "now.cheaperHard", "now.cheaperLate");

  private final Comparison comparison;
  private final ServiceStudy study;
  private final Wording words;
  private final PageOne page;

  private PresentProof(Job job, ServiceStudy study) {
    comparison = study.comparison();
    this.study = study;
    words = DocumentTexts.words(job.dealer().locale(), job.dealer().units());
    Proposal proposal = new Proposal(comparison, null, study, job.dealer(), DAY, null, null);
    page = new PageOne(proposal.model(), words);
  }

  static void check(Job job, Comparison comparison) {
    job.service(comparison).map(study -> new PresentProof(job, study)).ifPresent(PresentProof::all);
  }

  private void all() {
    if (!comparison.verdict().permitsRecommendation()) {
      assertThat(page.topics()).as("nothing is advised yet").doesNotContain(text("now.topic"));
      return;
    }
    assertThat(page.said()).contains(words.advice(study.advice()));
    order();
    study.options().forEach(this::figures);
    overTheYears();
    paybacks();
    setting();
  }

  private String text(String key) {
    return words.text(key);
  }

  private boolean keeps() {
    return study.advice() != Advice.REPLACE;
  }

  /** What is to be kept comes first, and nothing else is recommended then. */
  private void order() {
    int now = page.topics().indexOf(text("now.topic"));
    int fresh = page.topics().indexOf(text("now.ifNew"));
    assertThat(now).as("a topic of its own").isNotNegative();
    if (comparison.recommended().isEmpty()) {
      return;
    }
    assertThat(fresh >= 0)
        .as("a new one only if wanted, and here only where it is no choice later")
        .isEqualTo(keeps() && !page.hasChoices());
    if (keeps()) {
      assertThat(fresh < 0 || now < fresh).as("what is kept first").isTrue();
      assertThat(page.topics())
          .doesNotContain(text("opening.recommend"), text("opening.provisional"));
    }
  }

  private void figures(ServiceOption option) {
    String column = "Kind." + option.kind();
    if (page.cell("now.cost", column).isEmpty()) {
      assertThat(option.kind()).as("left out").isIn(Kind.SET_RIGHT, Kind.METERED);
      return;
    }
    says("compare.saltYear", column, Figure.of(option.salt(), 0));
    says("compare.waterYear", column, Figure.of(option.water()));
    says("every.hard", column, Figure.of(option.hardWater().total(), 0));
    says("every.days", column, Figure.days(option.daysBetweenRegenerations(), 1));
    says("now.cost", column, Figure.about(option.cost()));
    option.price().ifPresent(price -> says("compare.price", column, Figure.of(price)));
  }

  private void says(String line, String column, Figure figure) {
    assertThat(page.cell(line, column)).as(line).contains(words.figure(figure));
  }

  private Optional<ServiceOption> option(Kind kind) {
    return study.option(kind);
  }

  private Money life(Kind kind) {
    int years = comparison.priceList().terms().years();
    return option(kind)
        .flatMap(ServiceOption::candidate)
        .map(candidate -> candidate.life().total())
        .orElseGet(() -> study.runningAsFound().after(years));
  }

  /** Which way the costs over the years stand, and by how much. */
  private void overTheYears() {
    Optional<Candidate> unit = option(Kind.REPLACED).flatMap(ServiceOption::candidate);
    List<String> claims = claims();
    boolean compared = unit.isPresent() && (keeps() || option(Kind.SET_RIGHT).isPresent());
    assertThat(claims).hasSize(compared ? 1 : 0);
    if (compared) {
      Kind kept = keeps() ? way() : Kind.SET_RIGHT;
      claim(claims.get(0), unit.get(), life(kept));
    } else if (!keeps()) {
      assertThat(page.said()).containsAnyOf(text("now.noSetting"), text("now.noneServes"));
    }
  }

  /** Those with a reason begin as the one without. */
  private List<String> claims() {
    List<String> claims =
        OVER_THE_YEARS.stream().filter(key -> page.found(key).isPresent()).toList();
    return claims.size() < 2
        ? claims
        : claims.stream().filter(key -> !key.equals("now.cheaper")).toList();
  }

  private Kind way() {
    return switch (study.advice()) {
      case LEAVE -> Kind.AS_FOUND;
      case SET_RIGHT -> Kind.SET_RIGHT;
      case ADD_METER -> Kind.METERED;
      case REPLACE -> Kind.REPLACED;
    };
  }

  /** What a reader finds who takes one printed sum from the other. */
  private String apart(Money one, Money other) {
    return words.figure(Figure.apart(one, other));
  }

  private void claim(String key, Candidate unit, Money kept) {
    Money total = unit.life().total();
    double ratio = amount(total) / amount(kept);
    List<String> parts = page.found(key).orElseThrow();
    assertThat(parts)
        .contains(
            unit.softener().name(),
            key.equals("now.level") ? unit.softener().name() : apart(total, kept))
        .anyMatch(
            part ->
                unit.life().years() == 1
                    || part.equals(words.figure(Figure.of(unit.life().years()))));
    assertThat(ratio)
        .as(key)
        .isBetween(
            key.equals("now.level") ? 1 / LEVEL - 0.001 : key.equals("now.dearer") ? 1 : 0,
            key.equals("now.level") ? LEVEL + 0.001 : key.equals("now.dearer") ? 1e9 : 1);
    assertThat(key).isNotEqualTo(keeps() ? "now.cheaper" : "now.cheaperLate");
    boolean hard = page.found("now.stillHard").isPresent();
    assertThat(keeps() || hard || key.equals("now.cheaper")).as("replaced for a reason").isTrue();
  }

  private static double amount(Money money) {
    return money.getAmount().doubleValue();
  }

  private void paybacks() {
    option(Kind.REPLACED)
        .ifPresent(unit -> payback(unit, unit.candidate().orElseThrow().softener().name()));
    option(Kind.METERED)
        .filter(meter -> study.advice() == Advice.ADD_METER)
        .ifPresent(meter -> payback(meter, text("now.meter")));
  }

  private void payback(ServiceOption option, String name) {
    Optional<Payback> right = option.payback().filter(each -> study.advice() != Advice.LEAVE);
    Payback found = option.paybackAgainstFound().orElseThrow();
    right.ifPresent(first -> quotient(option, first, Kind.SET_RIGHT));
    quotient(option, found, Kind.AS_FOUND);
    String alone = words.payback(found);
    assertThat(page.said())
        .contains(
            right
                .map(words::payback)
                .map(first -> said("now.payback.both", name, first, alone))
                .orElseGet(() -> said("now.payback.one", name, alone)));
    String never = right.isPresent() ? "now.never.right" : "now.never.found";
    if (right.orElse(found).never()) {
      assertThat(page.said()).as("never is said plainly").contains(text(never));
    }
  }

  private String said(String key, String... parts) {
    return words.text(key, Stream.of(parts).map(Figure::of).toArray(Figure[]::new));
  }

  /** Price ÷ what is saved a year; nothing where nothing is saved. */
  private void quotient(ServiceOption option, Payback payback, Kind against) {
    double saved = amount(option(against).orElseThrow().cost()) - amount(option.cost());
    double price = amount(option.price().orElseThrow());
    OptionalDouble years = payback.years();
    assertThat(years.isPresent()).as("%s saves %s", option.kind(), saved).isEqualTo(saved > 0);
    years.ifPresent(
        value -> assertThat(value).isCloseTo(price / saved, Offset.offset(1e-6 * value + 1e-9)));
  }

  /** Setting it right is said to save, or to be for the water. */
  private void setting() {
    page.found("now.softer")
        .ifPresent(
            parts -> {
              Function<Kind, Double> hard =
                  kind -> option(kind).orElseThrow().hardWater().total().gallons();
              assertThat(amount(option(Kind.SET_RIGHT).orElseThrow().cost()))
                  .isGreaterThanOrEqualTo(amount(study.asFound().cost()));
              assertThat(hard.apply(Kind.SET_RIGHT)).isLessThan(hard.apply(Kind.AS_FOUND));
            });
  }
}
