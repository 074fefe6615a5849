package io.github.brinewright.internal.screen;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.internal.visit.Asked;
import io.github.brinewright.internal.visit.Trial;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Section;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.sale.Packages;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.ServiceStudy;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Sizes side by side, what tips the choice, the year in the home, and what may be added.
 *
 * @param look how it is read
 * @param trial the home, and what is tried
 * @param asked what the page asks with
 * @param comparison of the home as it is tried
 * @param service of the softener in the house; null where there is none
 * @param date of today
 */
record CompareView(
    Look look,
    Trial trial,
    Asked asked,
    Comparison comparison,
    @Nullable ServiceStudy service,
    LocalDate date) {

  /** The view of what is tried. */
  static CompareView of(Look look, Trial trial, Asked asked, LocalDate date) {
    Comparison comparison = trial.comparison();
    ServiceStudy service = trial.job().service(comparison).orElse(null);
    return new CompareView(look, trial, asked, comparison, service, date);
  }

  /** What changes with sliders and ticks, by the name of its place. */
  Map<String, String> parts() {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("bars", new BarsView(look, comparison, service).html().toString());
    parts.put("sizes", answer().full().toString());
    parts.put("near", isShown() ? new NearView(look, comparison).html().toString() : "");
    parts.put("totals", extras().totals().toString());
    if (asked.value("also").equals("year")) {
      addYear(parts);
    }
    return parts;
  }

  /** What takes longer, so that a page asks for it once nobody is at the sliders. */
  private void addYear(Map<String, String> parts) {
    List<Section> year = isShown() ? yearly() : List.of();
    parts.put("tips", new TipsView(look, trial.job(), trial.home()).html().toString());
    parts.put("changes", sections(year, "changes"));
    parts.put("year", sections(year, "year"));
  }

  /** In one sentence, for those who listen. */
  String said() {
    return answer().said();
  }

  private AnswerView answer() {
    return new AnswerView(look, comparison, service, trial.job().dealer(), date);
  }

  private boolean isShown() {
    return comparison.verdict().permitsRecommendation();
  }

  private List<Section> yearly() {
    Dealer dealer = trial.job().dealer();
    return new Proposal(
            comparison,
            trial.job().study(comparison).orElse(null),
            service,
            dealer,
            date,
            null,
            null)
        .sections();
  }

  private String sections(List<Section> sections, String key) {
    Html html = new Html();
    sections.stream()
        .filter(section -> section.key().equals(key))
        .forEach(section -> html.add(look.pieces().section(section)));
    return html.toString();
  }

  private ExtrasView extras() {
    Packages packages = Packages.of(comparison, service, null);
    Advice advice = service == null ? Advice.REPLACE : service.advice();
    return new ExtrasView(look, packages, asked.extras(), comparison.priceList().credit(), advice);
  }

  /** The whole view. */
  Html html() {
    Map<String, String> parts = parts();
    Html bars = place(parts, "bars");

    return new Html()
        .add(card("try", "page.try", new KnobsView(look, trial).html().add(bars)))
        .add(card("sizes", "page.sizes", place(parts, "sizes")))
        .add(card("tips", "page.tips", place(parts, "tips").add(place(parts, "changes"))))
        .add(card("near", "page.near", place(parts, "near")))
        .add(card("totals", "choices.totals", extras().ticks().add(place(parts, "totals"))))
        .add(card("year", "page.year", place(parts, "year")));
  }

  private Html card(String name, String title, Html content) {
    String heading = name + "-heading";
    return new Html()
        .open("section", "class", "card", "aria-labelledby", heading)
        .element("h2", look.text(title), "id", heading)
        .add(content)
        .close("section");
  }

  private static Html place(Map<String, String> parts, String name) {
    return new Html()
        .open("div", "id", "part-" + name)
        .svg(parts.getOrDefault(name, ""))
        .close("div");
  }
}
