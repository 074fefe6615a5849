package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.MarginCheck;
import io.github.brinewright.demand.UseBasis;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.model.Items;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.sizing.Assumption;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What a report on a present softener rests on, and what it cannot mend. */
final class ServiceNotes {
  /** Those that a report has room for; what a sale alone asks for is left to a proposal. */
  private static final Set<Caution> GENERAL =
      EnumSet.of(
          Caution.LOCAL_RULES,
          Caution.NOT_A_PURIFIER,
          Caution.SODIUM,
          Caution.SODIUM_IN_HOT_WATER,
          Caution.PRE_TREATMENT,
          Caution.DISCHARGE,
          Caution.POTASSIUM,
          Caution.WELL_TESTS);

  private static final int MOST_MARGINS = 3;

  private final ServiceStudy study;
  private final ServiceSections.Print print;
  private final Comparison comparison;

  ServiceNotes(ServiceStudy study, ServiceSections.Print print) {
    this.study = study;
    this.print = print;
    comparison = study.comparison();
  }

  /** What no setting mends, and what no softener does. */
  Section mends() {
    List<Phrase> items = new ArrayList<>();
    comparison.verdict().reasons().forEach(reason -> items.add(new Phrase.Found(reason)));
    items.addAll(margins());
    if (study.present().ageYears().orElse(0) > 0) {
      items.add(Phrase.text("service.mends.age"));
    }
    items.add(Phrase.text("service.mends.water"));
    return section("service.mends", items);
  }

  /** The first margins that even the right setting breaks, and how many more there are. */
  private List<Phrase> margins() {
    List<MarginCheck> broken =
        study
            .option(Kind.SET_RIGHT)
            .flatMap(ServiceOption::candidate)
            .map(Candidate::marginsBroken)
            .orElse(List.of());
    List<Phrase> items = new ArrayList<>();
    broken.stream()
        .limit(MOST_MARGINS)
        .map(check -> Phrase.text("service.mends.margin", new Phrase.Margin(check)))
        .forEach(items::add);
    if (broken.size() > MOST_MARGINS) {
      items.add(
          Phrase.text("service.mends.margins", Phrase.of(Figure.of(broken.size() - MOST_MARGINS))));
    }
    return items;
  }

  /** What is taken as so, each with the standing of who states it. */
  Section assumed() {
    List<Phrase> items = new ArrayList<>();
    study.assumptions().forEach(each -> items.add(assumed(each)));
    UseBasis basis = comparison.home().use().expectedBasis();
    if (basis != UseBasis.READINGS) {
      items.add(Phrase.text("service.use", Phrase.of(basis)));
    }
    items.add(
        Phrase.text(
            "service.prices",
            Phrase.of(new Figure.PriceOfMass(comparison.tariff().perPound(regenerant()))),
            Phrase.plain(comparison.tariff().name())));
    return section("service.assumed", items);
  }

  private Section section(String key, List<Phrase> items) {
    return Section.of(
        key,
        Phrase.text(key),
        print == ServiceSections.Print.SMALL
            ? Paragraph.fine(Phrase.sentences(items))
            : new Items(items, items.size() > 1));
  }

  private static Phrase assumed(Assumption each) {
    return Phrase.text(
        "service.assumes", new Phrase.Assumed(each), Phrase.of(each.kind().source().standing()));
  }

  private Regenerant regenerant() {
    return study.present().regenerant();
  }

  /** The cautions that apply to the softener as it is and to what would take its place. */
  Section cautions() {
    Set<Regenerant> salts = new HashSet<>(Set.of(regenerant()));
    study
        .option(Kind.REPLACED)
        .flatMap(ServiceOption::candidate)
        .ifPresent(unit -> salts.add(unit.softener().regenerant()));
    List<Phrase> cautions =
        Caution.applying(comparison.home(), comparison.verdict(), salts).stream()
            .filter(GENERAL::contains)
            .<Phrase>map(Phrase.Warned::new)
            .toList();
    return Section.of(
        "cautions", Phrase.text("cautions.alone"), Paragraph.fine(Phrase.sentences(cautions)));
  }
}
