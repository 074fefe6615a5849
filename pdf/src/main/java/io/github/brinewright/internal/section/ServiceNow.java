package io.github.brinewright.internal.section;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.VerdictKind;
import io.github.brinewright.model.Columns;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Facts;
import io.github.brinewright.model.Items;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.model.Section;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** What the softener in the house is and does, and what is wrong with it. */
final class ServiceNow {
  /** More faults than these are set small, so that they stay on the first page. */
  private static final int MOST_IN_FULL_SIZE = 3;

  private static final int MOST_WITH_FACTS = 4;

  /** Times the hardness that iron and manganese make of it. */
  private static final double WORTH_NAMING = 1.02;

  private final ServiceStudy study;
  private final HomeLoad home;
  private final ServiceOption asFound;

  ServiceNow(ServiceStudy study) {
    this.study = study;
    home = study.comparison().home();
    asFound = study.asFound();
  }

  /** What it is and does; where there is much to mend, its facts are set as rows. */
  Section section() {
    List<Element> elements = new ArrayList<>();
    if (study.comparison().verdict().kind() != VerdictKind.READY) {
      String verdict = "verdict." + study.comparison().verdict().kind().name();
      elements.add(
          Paragraph.strong(
              Phrase.text("service.verdict", Phrase.text(verdict), Phrase.text("service.mends"))));
    }
    elements.add(Paragraph.of(lead()));
    if (!crowded()) {
      elements.add(new Facts(facts()));
    }
    elements.add(
        new Columns(List.of(List.of(new FoundRows(study.found()).rows()), List.of(does()))));
    return new Section("service.now", Phrase.NONE, elements, false);
  }

  /** Whether there is more to mend than a page has room for beside large facts. */
  private boolean crowded() {
    return study.faults().size() > MOST_WITH_FACTS;
  }

  private Phrase lead() {
    List<Phrase> sentences = new ArrayList<>();
    sentences.add(
        Phrase.text(
            "service.lead",
            Phrase.of(Figure.of(home.site().household().people())),
            Phrase.of(Figure.roughly(home.use().expected())),
            Phrase.of(Figure.of(home.site().softenedWater().hardness()))));
    Hardness tested = home.site().softenedWater().hardness();
    if (home.compensatedHardness().exceeds(tested.times(WORTH_NAMING))) {
      sentences.add(
          Phrase.text("service.leadIron", Phrase.of(Figure.of(home.compensatedHardness()))));
    }
    new UseTold(home).sentence().ifPresent(sentences::add);
    return Phrase.sentences(sentences);
  }

  /** With labels of facts or, where they are rows, of those. */
  private List<Row> facts() {
    String kind = crowded() ? "service.row." : "service.fact.";
    Figure out = Figure.roughDays(asFound.hardWater().runOutDays());
    return List.of(
        Row.of(kind + "days", ServiceRow.days(asFound)),
        Row.of(kind + "salt", Figure.roughly(asFound.salt())),
        Row.of(kind + "out", out),
        Row.of(kind + "cost", Figure.about(asFound.cost())));
  }

  private Rows does() {
    List<Row> rows = new ArrayList<>(crowded() ? facts() : List.of());
    rows.add(Row.of("service.usable", Figure.roughly(study.found().usable())));
    rows.add(Row.of("service.unused", Figure.percent(asFound.years().unusedShare())));
    rows.add(Row.of("service.water", Figure.roughly(asFound.water())));
    rows.add(Row.of("service.hard", Figure.roughly(asFound.hardWater().total())));
    study
        .present()
        .saltBought()
        .ifPresent(bought -> rows.add(Row.of("service.bought", Figure.of(bought, 0))));
    study
        .present()
        .hardnessAfter()
        .ifPresent(behind -> rows.add(Row.of("service.behind", Figure.of(behind))));
    return new Rows(
        "service.does", List.of(Phrase.text("service.does"), Phrase.text("service.year")), rows);
  }

  /** What is wrong, the gravest first. */
  Section wrong() {
    List<Phrase> faults = study.faults().stream().<Phrase>map(Phrase.Wrong::new).toList();
    if (faults.isEmpty()) {
      return Section.of(
          "service.wrong",
          Phrase.text("service.right"),
          Paragraph.of(Phrase.text("service.nothingWrong")));
    }
    Element items = new Items(faults, faults.size() > MOST_IN_FULL_SIZE);
    return Section.of("service.wrong", Phrase.text("service.wrong"), items);
  }
}
