package io.github.brinewright.chance;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Margin;
import io.github.brinewright.comparison.MarginCheck;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.joda.money.Money;

/** What the choice keeps to, worked out from the candidates alone. */
final class ChoiceProof {
  private static final double LEVEL = 1.02;

  private final List<Candidate> fit;
  private final Set<Margin> ranking;

  private ChoiceProof(Comparison comparison) {
    fit = comparison.candidates().stream().filter(Candidate::feasible).toList();
    ranking = EnumSet.allOf(Margin.class);
    ranking.removeIf(margin -> fit.stream().allMatch(one -> broken(one).contains(margin)));
  }

  static void check(Comparison comparison) {
    ChoiceProof proof = new ChoiceProof(comparison);
    assertThat(comparison.recommended().isPresent())
        .as("there is a recommended candidate where one fits and the verdict permits it")
        .isEqualTo(!proof.fit.isEmpty() && comparison.verdict().permitsRecommendation());
    comparison.recommended().ifPresent(proof::check);
    comparison
        .cheapestThatFits()
        .ifPresent(
            cheapest ->
                assertThat(proof.fit)
                    .as("the cheapest that fits")
                    .noneMatch(one -> total(one).isLessThan(total(cheapest))));
  }

  private static Set<Margin> broken(Candidate candidate) {
    Set<Margin> broken = EnumSet.noneOf(Margin.class);
    candidate.marginsBroken().forEach(check -> broken.add(check.margin()));
    return broken;
  }

  private static Money total(Candidate candidate) {
    return candidate.life().total();
  }

  private long count(Candidate candidate) {
    return broken(candidate).stream().filter(ranking::contains).count();
  }

  private double excess(Candidate candidate) {
    return candidate.marginsBroken().stream()
        .filter(check -> ranking.contains(check.margin()))
        .mapToDouble(MarginCheck::excess)
        .sum();
  }

  private void check(Candidate chosen) {
    assertThat(chosen.feasible()).as("the recommended keeps every limit").isTrue();
    if (fit.stream().anyMatch(one -> broken(one).isEmpty())) {
      assertThat(broken(chosen)).as("margins broken while another keeps all").isEmpty();
    }
    long fewest = fit.stream().mapToLong(this::count).min().orElseThrow();
    assertThat(count(chosen)).as("margins broken by the recommended").isEqualTo(fewest);
    List<Candidate> asFew = fit.stream().filter(one -> count(one) == fewest).toList();
    double least = asFew.stream().mapToDouble(this::excess).min().orElseThrow();
    assertThat(excess(chosen)).as("what its margins are missed by").isEqualTo(least);
    Money cheapest =
        asFew.stream()
            .filter(one -> excess(one) == least)
            .map(ChoiceProof::total)
            .min(Comparator.naturalOrder())
            .orElseThrow();
    double cent = Math.pow(10, -cheapest.getScale());
    assertThat(amount(total(chosen)))
        .as("2 % above the cheapest that breaks as few margins, as ranked")
        .isLessThanOrEqualTo(LEVEL * amount(cheapest) + cent);
  }

  private static double amount(Money money) {
    return money.getAmount().doubleValue();
  }
}
