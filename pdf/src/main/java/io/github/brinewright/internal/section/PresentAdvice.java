package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Topic;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.Payback;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Rough;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What comes of the softener that is in the house: to keep it or to replace it, why, what changes,
 * and when a price has come back. Nothing is said that was not computed.
 */
final class PresentAdvice {
  private final ServiceStudy study;
  private final Comparison comparison;
  private final Advice advice;
  private final Optional<ServiceOption> right;
  private final Optional<ServiceOption> unit;

  PresentAdvice(ServiceStudy study) {
    this.study = study;
    comparison = study.comparison();
    advice = study.advice();
    right = study.option(Kind.SET_RIGHT);
    unit = study.option(Kind.REPLACED);
  }

  /** Whether its figures are those of the recommended candidate. */
  boolean showsRecommended() {
    return unit.flatMap(ServiceOption::candidate).filter(comparison::recommends).isPresent();
  }

  Topic topic() {
    List<Element> matter = new ArrayList<>();
    matter.add(Paragraph.strong(new Phrase.Advised(advice)));
    Phrase why = Phrase.sentences(why());
    if (!why.isEmpty()) {
      matter.add(Paragraph.of(why));
    }
    matter.add(new PresentTable(study).table());
    Phrase paybacks = Phrase.sentences(paybacks());
    if (!paybacks.isEmpty()) {
      matter.add(Paragraph.of(paybacks));
    }
    matter.add(Paragraph.quiet(Phrase.sentences(basis())));
    return new Topic(Phrase.text("now.topic"), matter);
  }

  /** The same where there is little room. */
  List<Phrase> sentences() {
    List<Phrase> all = new ArrayList<>(why());
    all.addAll(paybacks());
    return all;
  }

  private boolean replaces() {
    return advice == Advice.REPLACE;
  }

  private List<Phrase> why() {
    return replaces() ? whyReplaced() : whyKept();
  }

  private List<Phrase> whyKept() {
    List<Phrase> sentences = new ArrayList<>();
    if (right.isEmpty()) {
      sentences.add(Phrase.text("now.noSetting"));
    } else if (advice == Advice.SET_RIGHT) {
      softer(right.get()).ifPresent(sentences::add);
    }
    newUnit().map(candidate -> overTheYears(candidate, kept())).ifPresent(sentences::add);
    notCompared().ifPresent(sentences::add);
    return sentences;
  }

  private List<Phrase> whyReplaced() {
    if (right.isEmpty()) {
      return List.of(Phrase.text(unit.isPresent() ? "now.noSetting" : "now.noneServes"));
    }
    Candidate candidate = newUnit().orElseThrow();
    Phrase cost = overTheYears(candidate, life(right.get()));
    return stillHard(candidate).map(hard -> List.of(hard, cost)).orElseGet(() -> List.of(cost));
  }

  private Optional<Candidate> newUnit() {
    return unit.flatMap(ServiceOption::candidate);
  }

  /** What the advised way costs over the years. */
  private Money kept() {
    return life(study.option(advice.way()).orElseThrow());
  }

  private Money life(ServiceOption option) {
    int years = comparison.priceList().terms().years();
    return option
        .candidate()
        .map(candidate -> candidate.life().total())
        .orElseGet(() -> study.runningAsFound().after(years));
  }

  /** The new one against keeping what there is, price included. */
  private Phrase overTheYears(Candidate candidate, Money kept) {
    return Phrase.text(
        stands(candidate, kept),
        Phrase.of(Figure.of(candidate.life().years())),
        Phrase.plain(candidate.softener().name()),
        Phrase.of(Figure.apart(candidate.life().total(), kept)),
        Phrase.text("now.kept." + (replaces() ? Kind.SET_RIGHT : advice.way())));
  }

  /** What is cheaper over the years and not advised all the same says why. */
  private String stands(Candidate candidate, Money kept) {
    Money total = candidate.life().total();
    double share = total.minus(kept).getAmount().doubleValue() / total.getAmount().doubleValue();
    if (Math.abs(share) < Comparison.LEVEL - 1 || Rough.alike(total, kept)) {
      return "now.level";
    } else if (share > 0) {
      return "now.dearer";
    } else if (replaces()) {
      return "now.cheaper";
    }
    return ServiceAdvice.letsHardWater(candidate) ? "now.cheaperHard" : "now.cheaperLate";
  }

  /** Set right it lets more hard water pass than the dealer's margin allows, and the unit less. */
  private Optional<Phrase> stillHard(Candidate candidate) {
    ServiceOption kept = right.orElseThrow();
    // As it was found it has no margins: what replaces it and is not cheaper lets less pass.
    boolean hard =
        kept.candidate()
            .map(ServiceAdvice::letsHardWater)
            .orElseGet(() -> !stands(candidate, life(kept)).equals("now.cheaper"));
    return hard && !ServiceAdvice.letsHardWater(candidate)
        ? Optional.of(
            Phrase.text(
                "now.stillHard",
                hard(kept),
                Phrase.plain(candidate.softener().name()),
                hard(unit.orElseThrow())))
        : Optional.empty();
  }

  private static Phrase hard(ServiceOption option) {
    return Phrase.of(Figure.of(option.hardWater().total(), 0));
  }

  /** What setting it right is for, where it does not save money. */
  private Optional<Phrase> softer(ServiceOption set) {
    Volume less = study.asFound().hardWater().total().minus(set.hardWater().total());
    Money found = study.asFound().cost();
    boolean saves = set.cost().isLessThan(found) && !Rough.alike(set.cost(), found);
    return !saves && less.isPositive()
        ? Optional.of(Phrase.text("now.softer", Phrase.of(Figure.of(less, 0))))
        : Optional.empty();
  }

  /** Why no new one is set against it although one is recommended. */
  private Optional<Phrase> notCompared() {
    if (unit.isPresent() || comparison.recommended().isEmpty()) {
      return Optional.empty();
    }
    Regenerant salt = study.present().regenerant();
    boolean sold =
        comparison.candidates().stream()
            .filter(Candidate::feasible)
            .anyMatch(candidate -> candidate.softener().regenerant() == salt);
    return Optional.of(
        sold ? Phrase.text("now.unpriced") : Phrase.text("now.noneForSalt", Phrase.of(salt)));
  }

  /** When prices have come back: of what is advised, and of the new one. */
  private List<Phrase> paybacks() {
    List<Phrase> sentences = new ArrayList<>();
    if (advice == Advice.SET_RIGHT) {
      right
          .flatMap(ServiceOption::paybackAgainstFound)
          .map(payback -> Phrase.text("now.payback.setting", new Phrase.Returned(payback)))
          .ifPresent(sentences::add);
    } else if (advice == Advice.ADD_METER) {
      study
          .option(Kind.METERED)
          .flatMap(option -> payback(option, Phrase.text("now.meter")))
          .ifPresent(sentences::add);
    }
    newUnit()
        .map(candidate -> Phrase.plain(candidate.softener().name()))
        .flatMap(name -> payback(unit.orElseThrow(), name))
        .ifPresent(sentences::add);
    return sentences;
  }

  /** Against the softener set right first; where that is as it was found, against that alone. */
  private Optional<Phrase> payback(ServiceOption option, Phrase name) {
    Optional<Payback> first = option.payback().filter(each -> advice != Advice.LEAVE);
    return option.paybackAgainstFound().map(found -> payback(name, first, found));
  }

  private static Phrase payback(Phrase name, Optional<Payback> right, Payback found) {
    Phrase alone = new Phrase.Returned(found);
    Phrase time =
        right
            .map(first -> Phrase.text("now.payback.both", name, new Phrase.Returned(first), alone))
            .orElseGet(() -> Phrase.text("now.payback.one", name, alone));
    String why = right.isPresent() ? "now.never.right" : "now.never.found";
    boolean never = right.orElse(found).never();
    return Phrase.sentences(List.of(time, never ? Phrase.text(why) : Phrase.NONE));
  }

  /** What the figures rest on. */
  private List<Phrase> basis() {
    List<Phrase> sentences = new ArrayList<>();
    sentences.add(Phrase.text("now.basis", Phrase.of(Figure.of(HomeStudy.USUAL_YEARS))));
    if (right.isPresent() && right.get().price().isEmpty() && advice != Advice.LEAVE) {
      sentences.add(Phrase.text("now.visitUnpriced"));
    }
    return sentences;
  }
}
