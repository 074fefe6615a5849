package io.github.brinewright.internal.screen;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Section;
import io.github.brinewright.proposal.ComparisonPage;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What follows from the answers: the verdict, and the sizes side by side.
 *
 * @param look how it is read
 * @param comparison of the home
 * @param service of the softener in the house; null where there is none
 * @param dealer who shows it
 * @param date of today
 */
public record AnswerView(
    Look look,
    Comparison comparison,
    @Nullable ServiceStudy service,
    Dealer dealer,
    LocalDate date) {
  private static final Set<String> SHORT = Set.of("verdict", "three");

  private List<Section> sections() {
    return new ComparisonPage(comparison, dealer, date, service).model().sections();
  }

  /** Beside the entries. */
  Html brief() {
    Html html = new Html();
    sections().stream()
        .filter(section -> SHORT.contains(section.key()))
        .forEach(section -> html.add(look.pieces().section(section)));
    return html;
  }

  /** The page of sizes. */
  Html full() {
    Html html = new Html();
    sections().forEach(section -> html.add(look.pieces().section(section)));
    return html;
  }

  /** In one sentence, for those who listen. */
  public String said() {
    String verdict = look.text("verdict." + comparison.verdict().kind().name());
    if (service != null && service.advice() != Advice.REPLACE) {
      String advice = look.words().advice(service.advice());
      return look.words().text("page.saidKeep", Figure.of(verdict), Figure.of(advice));
    }
    return comparison
        .recommended()
        .filter(each -> comparison.verdict().permitsRecommendation())
        .map(
            each ->
                look.words()
                    .text(
                        "page.said",
                        Figure.of(verdict),
                        Figure.of(each.softener().name()),
                        Figure.of(each.quote().total())))
        .orElse(verdict);
  }
}
