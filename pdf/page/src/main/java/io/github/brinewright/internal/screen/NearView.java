package io.github.brinewright.internal.screen;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Margin;
import io.github.brinewright.comparison.MarginCheck;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.trace.Figure;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * How near each size is to each limit and margin.
 *
 * @param look how it is read
 * @param comparison of the home
 */
record NearView(Look look, Comparison comparison) {
  private static final int SIZES = 3;

  Html html() {
    List<Candidate> sizes = comparison.columns(SIZES);
    Html html = new Html();
    for (Candidate size : sizes) {
      size.broken().forEach(finding -> html.add(broken(size, finding)));
    }
    Set<Margin> margins = new LinkedHashSet<>();
    sizes.forEach(size -> size.margins().forEach(check -> margins.add(check.margin())));
    return margins.isEmpty() ? html : html.add(table(sizes, margins));
  }

  private Html broken(Candidate size, Finding finding) {
    String said = size.softener().name() + ": " + look.words().finding(finding);
    return new Html().element("p", said, "class", "broken");
  }

  private Html table(List<Candidate> sizes, Set<Margin> margins) {
    String name = look.text("page.near");
    Html html =
        new Html()
            .open("div", "class", "scroll", "role", "group", "tabindex", "0", "aria-label", name)
            .open("table")
            .open("thead")
            .open("tr")
            .element("td", "");
    for (Candidate size : sizes) {
      String style = comparison.recommends(size) ? "value chosen" : "value";
      html.element("th", size.softener().name(), "scope", "col", "class", style);
    }
    html.close("tr").close("thead").open("tbody");
    margins.forEach(margin -> html.add(line(sizes, margin)));
    return html.close("tbody").close("table").close("div");
  }

  private Html line(List<Candidate> sizes, Margin margin) {
    Html html = new Html().open("tr").element("th", look.words().term(margin), "scope", "row");
    for (Candidate size : sizes) {
      Optional<MarginCheck> check = size.margin(margin);
      html.open("td", "class", comparison.recommends(size) ? "value chosen" : "value");
      check.ifPresent(each -> html.add(cell(each)));
      html.close("td");
    }
    return html.close("tr");
  }

  /** The value beside its limit, and in a word how it stands. */
  private Html cell(MarginCheck check) {
    String grade = check.grade().name().toLowerCase(Locale.ROOT);
    boolean least = check.margin().sense() == Margin.Sense.AT_LEAST;
    String both =
        look.words().text(least ? "page.atLeast" : "page.atMost", check.value(), check.limit());
    String stands = look.words().term(check.grade());
    String miss =
        check.broken()
            ? look.words().text("page.miss", Figure.of(stands), Figure.percent(check.excess()))
            : stands;
    return new Html()
        .element("span", both, "class", "figure")
        .element("span", miss, "class", "grade grade-" + grade);
  }
}
