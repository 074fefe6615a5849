package io.github.brinewright.internal.screen;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What would be recommended with other people or other water, all else as the visit says.
 *
 * @param look how it is read
 * @param job of the home
 * @param home as the visit says
 */
record TipsView(Look look, Job job, QuotedHome home) {
  private static final int MOST_PEOPLE = 10;
  private static final int GRAINS_APART = 5;
  private static final int MOST_GRAINS = 50;

  Html html() {
    Map<Phrase, String> people = new LinkedHashMap<>();
    int told = home.site().household().people();
    for (int many = 1;
        many <= Math.min(Math.max(MOST_PEOPLE, told), Household.PEOPLE.high());
        many++) {
      people.put(Phrase.of(Figure.of(many)), recommended(home.site().withPeople(many)));
    }
    Map<Phrase, String> grains = new LinkedHashMap<>();
    for (int gpg = GRAINS_APART; gpg <= MOST_GRAINS; gpg += GRAINS_APART) {
      Hardness hardness = Hardness.ofGrainsPerGallon(gpg);
      harder(hardness)
          .ifPresent(site -> grains.put(Phrase.of(Figure.of(hardness)), recommended(site)));
    }
    return new Html()
        .open("div", "class", "columns")
        .add(table("page.tipsPeople", people))
        .add(table("page.tipsHardness", grains))
        .close("div");
  }

  private Optional<Site> harder(Hardness hardness) {
    Site site = home.site();
    return Optional.of(hardness)
        .filter(each -> site.enteringWith(each).exceeds(site.target()))
        .map(site::withHardness);
  }

  private String recommended(Site site) {
    Comparison comparison = job.prices().compare(site, home.tariff());
    return comparison
        .recommended()
        .filter(each -> comparison.verdict().permitsRecommendation())
        .map(each -> each.softener().name())
        .orElse("");
  }

  private String unitHead() {
    return home.site().present().isEmpty() ? "page.tipsUnit" : "page.tipsNew";
  }

  /** Neighbours with the same unit are one line. */
  private Html table(String head, Map<Phrase, String> found) {
    List<List<Phrase>> lines = new ArrayList<>();
    List<Phrase> run = new ArrayList<>();
    String unit = null;
    for (Map.Entry<Phrase, String> each : found.entrySet()) {
      if (!each.getValue().equals(unit) && unit != null) {
        lines.add(line(run, unit));
        run = new ArrayList<>();
      }
      unit = each.getValue();
      run.add(each.getKey());
    }
    if (unit != null) {
      lines.add(line(run, unit));
    }
    List<Phrase> heads = List.of(Phrase.text(head), Phrase.text(unitHead()));
    return new Html().open("div").add(new Tables(look.words()).data(heads, lines)).close("div");
  }

  private static List<Phrase> line(List<Phrase> run, String unit) {
    Phrase first = run.get(0);
    Phrase last = run.get(run.size() - 1);
    Phrase span = run.size() == 1 ? first : Phrase.text("page.span", first, last);
    return List.of(span, unit.isEmpty() ? Phrase.text("page.tipsNone") : Phrase.plain(unit));
  }
}
