package io.github.brinewright.internal.screen;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.internal.visit.Asked;
import io.github.brinewright.internal.visit.Trial;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Section;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.sale.Packages;
import io.github.brinewright.service.ServiceStudy;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Sizes side by side, what tips the choice, the year in the home, and what may be added.
 *
 * @param look how it is read
 * @param trial the home, and what is tried
 * @param asked what the page asks with
 * @param date of today
 */
public record CompareView(Look look, Trial trial, Asked asked, LocalDate date) {
  private static final Set<String> OF_THE_YEAR = Set.of("year", "changes");

  /** All of it, by the name of its place. */
  public Map<String, String> parts() {
    Comparison comparison = trial.comparison();
    ServiceStudy service = trial.job().service(comparison).orElse(null);
    Dealer dealer = trial.job().dealer();
    Map<String, String> parts = new LinkedHashMap<>();
    AnswerView answer = new AnswerView(look, comparison, service, dealer, date);
    parts.put("sizes", answer.full().toString());
    boolean shown = comparison.verdict().permitsRecommendation();
    parts.put("near", shown ? near(comparison).toString() : "");
    parts.put("year", shown ? year(comparison, service).toString() : "");
    ExtrasView extras = extras(comparison, service, shown);
    parts.put("totals", extras.totals().toString());
    return parts;
  }

  /** In one sentence, for those who listen. */
  public String said() {
    return new AnswerView(look, trial.comparison(), null, trial.job().dealer(), date).said();
  }

  private Html near(Comparison comparison) {
    return new Html()
        .element("h3", look.text("page.near"))
        .add(new NearView(look, comparison).html());
  }

  private Html year(Comparison comparison, @Nullable ServiceStudy service) {
    Html html = new Html();
    List<Section> sections =
        new Proposal(
                comparison,
                trial.job().study(comparison).orElse(null),
                service,
                trial.job().dealer(),
                date,
                null,
                null)
            .sections();
    sections.stream()
        .filter(section -> OF_THE_YEAR.contains(section.key()))
        .forEach(section -> html.add(look.pieces().section(section)));
    return html;
  }

  private ExtrasView extras(Comparison comparison, @Nullable ServiceStudy service, boolean shown) {
    Packages packages = Packages.of(comparison, service, null);
    return new ExtrasView(look, packages, asked.extras(), comparison.priceList().credit());
  }

  /** The whole view. */
  Html html() {
    Map<String, String> parts = parts();
    Comparison comparison = trial.comparison();
    Html html = new Html();
    html.open("section", "class", "card", "aria-labelledby", "try-heading");
    html.element("h2", look.text("page.try"), "id", "try-heading");
    html.add(new KnobsView(look, trial).html()).close("section");
    html.open("section", "class", "card", "aria-labelledby", "sizes-heading");
    html.element("h2", look.text("page.compare"), "id", "sizes-heading");
    place(html, parts, "sizes");
    place(html, parts, "near");
    html.close("section");
    html.open("section", "class", "card", "aria-labelledby", "extras-heading");
    html.element("h2", look.text("choices.totals"), "id", "extras-heading");
    html.add(extras(comparison, null, true).ticks());
    place(html, parts, "totals");
    html.close("section");
    html.open("section", "class", "card", "aria-labelledby", "year-heading");
    html.element("h2", look.text("page.year"), "id", "year-heading");
    place(html, parts, "year");
    return html.close("section");
  }

  private static void place(Html html, Map<String, String> parts, String name) {
    html.open("div", "id", "part-" + name).svg(parts.getOrDefault(name, "")).close("div");
  }
}
