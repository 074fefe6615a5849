package io.github.brinewright.documents;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.words.Wording;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the page of three sizes must say. */
final class ExpectedPage extends ExpectedComparison {
  ExpectedPage(Comparison comparison, @Nullable ServiceStudy service, Wording words) {
    super(comparison, service, words);
    if (!comparison.verdict().permitsRecommendation()) {
      return;
    }
    List<Candidate> three = comparison.columns(3);
    candidates(
        "three/compare",
        three,
        "compare.price",
        "compare.life",
        "compare.hard",
        "compare.limits",
        "compare.margins");
    if (comparison.recommended().isPresent() && comparison.treatment().isEmpty()) {
      grid("grid/grid", three);
    }
    for (Candidate candidate : three) {
      if (comparison.recommends(candidate)) {
        continue;
      }
      String name = candidate.softener().name();
      value("three/notes/" + candidate.softener().id(), name, note(candidate));
    }
  }

  private String note(Candidate candidate) {
    if (comparison.recommended().isEmpty()) {
      return broken(candidate, 1);
    }
    return words.reason(comparison.against(candidate).orElseThrow());
  }
}
