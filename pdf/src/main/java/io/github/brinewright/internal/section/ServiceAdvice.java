package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Margin;
import io.github.brinewright.comparison.MarginCheck;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.Payback;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is advised, and what the computation says for it. */
final class ServiceAdvice {
  private final ServiceStudy study;
  private final Optional<ServiceOption> right;

  ServiceAdvice(ServiceStudy study) {
    this.study = study;
    right = study.option(Kind.SET_RIGHT);
  }

  Section section() {
    List<Element> elements = new ArrayList<>();
    elements.add(Paragraph.strong(new Phrase.Advised(study.advice())));
    setRight().map(Phrase::sentences).map(Paragraph::of).ifPresent(elements::add);
    advised().map(this::bought).map(Phrase::sentences).map(Paragraph::of).ifPresent(elements::add);
    if (study.advice() == Advice.REPLACE && advised().isEmpty()) {
      elements.add(Paragraph.of(Phrase.text("service.why.ask")));
    }
    elements.add(Paragraph.quiet(Phrase.text("service.more")));
    return new Section("service.advice", Phrase.text("service.advice"), elements, false);
  }

  /** What setting it right changes, where that is part of what is advised. */
  private Optional<List<Phrase>> setRight() {
    boolean kept = study.advice() == Advice.SET_RIGHT || study.advice() == Advice.ADD_METER;
    return right
        .filter(option -> kept)
        .map(option -> new SetRight(study.asFound(), option).sentences());
  }

  /** What is to be bought, if anything. */
  private Optional<ServiceOption> advised() {
    return switch (study.advice()) {
      case LEAVE, SET_RIGHT -> Optional.empty();
      case ADD_METER -> study.option(Kind.METERED);
      case REPLACE -> study.option(Kind.REPLACED);
    };
  }

  private List<Phrase> bought(ServiceOption option) {
    List<Phrase> sentences = new ArrayList<>();
    Candidate candidate = option.candidate().orElseThrow();
    sentences.add(why(candidate));
    option
        .price()
        .ifPresent(
            price ->
                sentences.add(
                    Phrase.text(
                        "service.buy." + option.kind().name(),
                        Phrase.of(Figure.about(price)),
                        Phrase.plain(candidate.softener().name()))));
    option.payback().ifPresent(payback -> sentences.add(earned("service.againstRight", payback)));
    option
        .paybackAgainstFound()
        .ifPresent(payback -> sentences.add(earned("service.againstFound", payback)));
    return sentences;
  }

  private static Phrase earned(String key, Payback payback) {
    return Phrase.text(key, new Phrase.Returned(payback));
  }

  private Phrase why(Candidate chosen) {
    Optional<Candidate> kept = right.flatMap(ServiceOption::candidate);
    if (kept.isEmpty()) {
      return Phrase.text(
          study.advice() == Advice.ADD_METER ? "service.why.noClock" : "service.why.noSetting");
    }
    if (letsHardWater(kept.get()) && !letsHardWater(chosen)) {
      return Phrase.text("service.why.hard");
    }
    return Phrase.text(
        "service.why.life",
        Phrase.of(Figure.of(chosen.life().years())),
        Phrase.of(Figure.roughly(chosen.life().total())),
        Phrase.of(Figure.roughly(kept.get().life().total())));
  }

  private static boolean letsHardWater(Candidate candidate) {
    return candidate.margin(Margin.HARD_WATER_MEAN).filter(MarginCheck::broken).isPresent();
  }
}
