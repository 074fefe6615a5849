package io.github.brinewright.chance;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.exchange.ComparisonCsv;
import io.github.brinewright.exchange.ComparisonJson;
import io.github.brinewright.exchange.Simulated;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** Figures as they leave the library: none that makes no sense. */
final class FiguresProof {
  private static final int DAYS = 365;
  private static final int MOST_OF_A_TWIN = 4 * DAYS;
  private static final List<String> OF_A_YEAR =
      List.of(
          "daysBetweenRegenerations",
          "expectedDaysBetweenRegenerations",
          "setVolumeGal",
          "regenerationsPerYear",
          "saltPerYearLb",
          "waterPerYearGal",
          "chlorideToDrainPerYearLb",
          "hardWaterGalPerYear",
          "hardWaterDaysPerYear",
          "monthsBetweenSaltFillings");

  private FiguresProof() {}

  static void check(Comparison comparison, Wording words, int years) {
    Simulated simulated = Simulated.of(comparison, years);
    Map<String, Object> json = parsed(ComparisonJson.one(simulated, words));
    numbers("", json);
    List<?> candidates = (List<?>) json.get("candidates");
    for (int i = 0; i < candidates.size(); i++) {
      Map<?, ?> fields = (Map<?, ?>) candidates.get(i);
      check(comparison.candidates().get(i), fields);
    }
    assertThat(ComparisonCsv.of(List.of(simulated))).doesNotContain("NaN", "Infinity", ",null");
    assertThat(ComparisonCsv.grid(List.of(comparison))).doesNotContain("NaN", "Infinity", ",null");
  }

  private static Map<String, Object> parsed(String json) {
    try {
      return JSON.std.mapFrom(json);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** No figure that leaves is negative, infinite or none. */
  private static void numbers(String path, Object value) {
    if (value instanceof Map<?, ?> fields) {
      fields.forEach((name, field) -> numbers(path + "." + name, field));
    } else if (value instanceof List<?> items) {
      items.forEach(item -> numbers(path + "[]", item));
    } else if (value instanceof Number number) {
      assertThat(number.doubleValue()).as(path).isFinite().isNotNegative();
    }
  }

  private static void check(Candidate candidate, Map<?, ?> fields) {
    assertThat(fields.get("feasible")).isEqualTo(candidate.feasible());
    if (!candidate.design().feasible()) {
      assertThat(candidate.feasible()).as("a bed that cannot serve is not sold").isFalse();
      OF_A_YEAR.forEach(name -> assertThat(fields.get(name)).as(name).isNull());
      assertThat(((Map<?, ?>) fields.get("costPerYear")).get("total")).as("cost").isNull();
      assertThat(((Map<?, ?>) fields.get("lifeCost")).get("total")).as("life cost").isNull();
      return;
    }
    boolean twin = "twin_alternating".equals(fields.get("arrangement"));
    assertThat(((Number) fields.get("regenerationsPerYear")).doubleValue())
        .as("regenerations")
        .isPositive()
        .isLessThanOrEqualTo(twin ? MOST_OF_A_TWIN : DAYS);
  }
}
