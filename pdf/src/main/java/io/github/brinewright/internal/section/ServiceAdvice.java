package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Margin;
import io.github.brinewright.comparison.MarginCheck;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.FaultKind;
import io.github.brinewright.service.Payback;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Rough;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** What is advised, and what the computation says for it. */
final class ServiceAdvice {
  private final ServiceStudy study;

  ServiceAdvice(ServiceStudy study) {
    this.study = study;
  }

  Section section() {
    List<Element> elements = new ArrayList<>();
    elements.add(Paragraph.strong(advice()));
    if (keeps()) {
      right().map(this::setRight).ifPresent(elements::add);
    }
    advised().map(this::bought).ifPresent(elements::add);
    if (study.advice() == Advice.REPLACE && advised().isEmpty()) {
      elements.add(Paragraph.of(Phrase.text("service.why.ask")));
    }
    return new Section("service.advice", Phrase.text("service.advice"), elements, false);
  }

  /** Where what is wrong lies elsewhere, there is nothing to set. */
  private Phrase advice() {
    if (!keeps() || right().isPresent()) {
      return new Phrase.Advised(study.advice());
    }
    return Phrase.text(study.advice() == Advice.ADD_METER ? "service.meterAlone" : "service.check");
  }

  private boolean keeps() {
    return study.advice() == Advice.SET_RIGHT || study.advice() == Advice.ADD_METER;
  }

  /** Set right, where that is another setting than the one found. */
  private Optional<ServiceOption> right() {
    return study
        .option(Kind.SET_RIGHT)
        .filter(option -> !option.bed().equals(study.asFound().bed()));
  }

  private Paragraph setRight(ServiceOption right) {
    return Paragraph.of(Phrase.sentences(new SetRight(study.asFound(), right).sentences()));
  }

  /** What is to be bought, if anything. */
  private Optional<ServiceOption> advised() {
    return switch (study.advice()) {
      case LEAVE, SET_RIGHT -> Optional.empty();
      case ADD_METER, REPLACE -> study.option(study.advice().way());
    };
  }

  private Paragraph bought(ServiceOption option) {
    List<Phrase> sentences = new ArrayList<>();
    Candidate candidate = option.candidate().orElseThrow();
    sentences.add(why(candidate));
    option.price().map(price -> price(option.kind(), price, candidate)).ifPresent(sentences::add);
    option.payback().map(back -> earned("service.againstRight", back)).ifPresent(sentences::add);
    option
        .paybackAgainstFound()
        .map(back -> earned("service.againstFound", back))
        .ifPresent(sentences::add);
    return Paragraph.of(Phrase.sentences(sentences));
  }

  private static Phrase price(Kind kind, Money price, Candidate candidate) {
    return Phrase.text(
        "service.buy." + kind.name(),
        Phrase.of(Figure.of(price)),
        Phrase.plain(candidate.softener().name()));
  }

  private static Phrase earned(String key, Payback payback) {
    return Phrase.text(key, new Phrase.Returned(payback));
  }

  /** No setting serves, or it costs less over the years, or it keeps hard water out. */
  private Phrase why(Candidate chosen) {
    if (study.faults().stream().anyMatch(fault -> fault.kind() == FaultKind.BED_TOO_SMALL)) {
      return Phrase.text(
          study.advice() == Advice.ADD_METER ? "service.why.noClock" : "service.why.noSetting");
    }
    Optional<Candidate> kept = study.option(Kind.SET_RIGHT).flatMap(ServiceOption::candidate);
    int years = chosen.life().years();
    Money keeping =
        kept.map(candidate -> candidate.life().total())
            .orElseGet(() -> study.runningAsFound().after(years));
    boolean softens = kept.filter(ServiceAdvice::letsHardWater).isPresent();
    if (chosen.life().total().isGreaterThan(keeping) || (softens && !letsHardWater(chosen))) {
      return Phrase.text("service.why.hard");
    }
    return Phrase.text(
        Rough.alike(chosen.life().total(), keeping) ? "service.why.level" : "service.why.life",
        Phrase.of(Figure.of(years)),
        Phrase.of(Figure.about(chosen.life().total())),
        Phrase.of(Figure.about(keeping)));
  }

  static boolean letsHardWater(Candidate candidate) {
    return candidate.margin(Margin.HARD_WATER_MEAN).filter(MarginCheck::broken).isPresent();
  }
}
