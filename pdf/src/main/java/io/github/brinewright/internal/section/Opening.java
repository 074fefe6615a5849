package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Facts;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Topic;
import io.github.brinewright.sizing.AddedIons;
import io.github.brinewright.sizing.YearlyUse;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.study.HowSure;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What we recommend, why, and what to know before deciding. */
public final class Opening {
  private final Comparison comparison;

  /** The first section of a proposal. */
  public Opening(Subject subject) {
    comparison = subject.comparison();
  }

  /** The section. */
  public Section section() {
    return comparison.recommended().map(this::recommend).orElseGet(this::nothingToSell);
  }

  private Section recommend(Candidate candidate) {
    List<Element> elements = new ArrayList<>();
    elements.add(recommended(candidate));
    elements.add(facts(candidate));
    elements.add(cheapest(candidate));
    taste(candidate)
        .map(text -> Topic.of("opening.taste", Paragraph.of(text)))
        .ifPresent(elements::add);
    elements.add(BeforeYouDecide.topic(comparison.cautions()));
    return new Section("opening", Phrase.NONE, elements, false);
  }

  private Topic recommended(Candidate candidate) {
    List<Element> matter = new ArrayList<>();
    matter.add(new Heading(Phrase.plain(candidate.softener().name()), Heading.Rank.NAME));
    matter.add(Paragraph.quiet(setting(candidate)));
    matter.add(Paragraph.of(new Phrase.Because(comparison.whyRecommended().orElseThrow())));
    givesUp(candidate).forEach(text -> matter.add(Paragraph.of(text)));
    sure(candidate).map(Paragraph::quiet).ifPresent(matter::add);
    boolean provisional = comparison.verdict().isProvisional();
    return new Topic(
        Phrase.text(provisional ? "opening.provisional" : "opening.recommend"), matter);
  }

  /** The margins that even the recommended one breaks. */
  static List<Phrase> givesUp(Candidate candidate) {
    return candidate.marginsBroken().stream()
        .map(check -> Phrase.text("opening.gives", new Phrase.Margin(check)))
        .toList();
  }

  private Optional<Phrase> sure(Candidate candidate) {
    return HowSure.of(comparison).stream()
        .map(each -> each.bestInPercentOfDraws(candidate))
        .flatMapToInt(OptionalInt::stream)
        .mapToObj(percent -> Phrase.text("study.HOW_SURE", Phrase.of(Figure.of(percent))))
        .findFirst();
  }

  private static Phrase setting(Candidate candidate) {
    return Phrase.text(
        "opening.setting",
        Phrase.of(candidate.setup().control()),
        Phrase.of(Figure.of(candidate.salt(), 1)));
  }

  private static Facts facts(Candidate candidate) {
    YearlyUse year = candidate.design().year().orElseThrow();
    String price =
        candidate.offer().installation().isZero() ? "opening.fact.equipment" : "opening.fact.price";
    return new Facts(
        List.of(
            Row.of("opening.fact.days", Figure.days(year.daysBetween(), 1)),
            Row.of("opening.fact.salt", Figure.of(year.salt(), 0)),
            Row.of("opening.fact.drain", Figure.of(year.water())),
            Row.of(price, Figure.of(candidate.quote().total()))));
  }

  /** The cheapest that fits: what it would save, and what it gives up. */
  private Topic cheapest(Candidate chosen) {
    Candidate cheapest = comparison.cheapestThatFits().orElseThrow();
    if (cheapest.equals(chosen)) {
      return Topic.of("opening.cheapest", Paragraph.of(Phrase.text("opening.cheapestIsThis")));
    }
    List<Element> matter = new ArrayList<>();
    Phrase name = Phrase.plain(cheapest.softener().name());
    matter.add(Paragraph.strong(new Phrase.Joined(List.of(name, setting(cheapest)), ", ")));
    comparison
        .against(cheapest)
        .ifPresent(reason -> matter.add(Paragraph.of(new Phrase.Because(reason))));
    return new Topic(Phrase.text("opening.cheapest"), matter);
  }

  /** What softening adds to what is drunk; nothing where hot water alone is softened. */
  private Optional<Phrase> taste(Candidate candidate) {
    if (!comparison.home().removedFromColdWater().isPositive()) {
      return Optional.empty();
    }
    AddedIons added = candidate.design().addedIons();
    return Optional.of(
        candidate.design().basis().regenerant() == Regenerant.SODIUM_CHLORIDE
            ? Phrase.text(
                "opening.tasteText",
                Phrase.of(Figure.of(added.sodiumMilligramsPerGlass(), 0)),
                Phrase.of(Figure.of(added.sodiumInColdWater(), 0)),
                Phrase.of(Figure.of(added.sodiumMilligramsPerDay(), 0)))
            : Phrase.text(
                "opening.tastePotassium", Phrase.of(Figure.of(added.potassiumInColdWater(), 0))));
  }

  /** Because nothing fits, or because the verdict permits nothing yet. */
  private Section nothingToSell() {
    List<Element> elements = new ArrayList<>();
    boolean permitted = comparison.verdict().permitsRecommendation();
    if (permitted) {
      elements.add(
          Paragraph.of(
              Phrase.text(
                  "opening.noneText",
                  Phrase.of(Figure.of(comparison.home().dailyLoad())),
                  Phrase.of(Figure.of(comparison.home().peakFlow())))));
    }
    List<Finding> cautions = comparison.cautions();
    if (!cautions.isEmpty()) {
      elements.add(BeforeYouDecide.topic(cautions));
    }
    Phrase title = permitted ? Phrase.text("opening.none") : Phrase.NONE;
    return new Section("opening", title, elements, false);
  }
}
