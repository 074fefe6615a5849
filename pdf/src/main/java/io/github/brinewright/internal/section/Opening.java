package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Facts;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Items;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Topic;
import io.github.brinewright.sizing.AddedIons;
import io.github.brinewright.sizing.YearlyUse;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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
    return Section.of(
        "opening",
        Phrase.NONE,
        recommended(candidate),
        facts(candidate),
        neighbour("opening.smaller", comparison.smaller(), "opening.noSmaller"),
        neighbour("opening.larger", comparison.larger(), "opening.noLarger"),
        Topic.of("opening.taste", Paragraph.of(taste(candidate))),
        check(cautions()));
  }

  private Topic recommended(Candidate candidate) {
    Phrase setting =
        Phrase.text(
            "opening.setting",
            Phrase.of(candidate.setup().control()),
            Phrase.of(Figure.of(candidate.salt(), 1)));
    return Topic.of(
        "opening.recommend",
        new Heading(Phrase.plain(candidate.softener().name()), Heading.Rank.NAME),
        Paragraph.quiet(setting),
        Paragraph.of(new Phrase.Because(comparison.whyRecommended().orElseThrow())));
  }

  private static YearlyUse year(Candidate candidate) {
    return candidate.design().year().orElseThrow();
  }

  private static Facts facts(Candidate candidate) {
    String price =
        candidate.offer().installation().isZero() ? "opening.fact.equipment" : "opening.fact.price";
    return new Facts(
        List.of(
            Row.of("opening.fact.days", Figure.days(year(candidate).daysBetween(), 1)),
            Row.of("opening.fact.salt", Figure.of(year(candidate).salt(), 0)),
            Row.of("opening.fact.drain", Figure.of(year(candidate).water())),
            Row.of(price, Figure.of(candidate.quote().total()))));
  }

  private Topic neighbour(String labelKey, Optional<Candidate> candidate, String noneKey) {
    List<Element> matter = new ArrayList<>();
    candidate.ifPresentOrElse(
        other -> describe(other, matter), () -> matter.add(Paragraph.of(Phrase.text(noneKey))));
    return new Topic(Phrase.text(labelKey), matter);
  }

  private void describe(Candidate candidate, List<Element> matter) {
    matter.add(Paragraph.strong(Phrase.plain(candidate.softener().name())));
    comparison
        .against(candidate)
        .ifPresent(reason -> matter.add(Paragraph.of(new Phrase.Because(reason))));
  }

  private static Phrase taste(Candidate candidate) {
    AddedIons added = candidate.design().addedIons();
    return candidate.design().basis().regenerant() == Regenerant.SODIUM_CHLORIDE
        ? Phrase.text(
            "opening.tasteText",
            Phrase.of(Figure.of(added.sodiumMilligramsPerGlass(), 0)),
            Phrase.of(Figure.of(added.sodium(), 0)),
            Phrase.of(Figure.of(added.sodiumMilligramsPerDay(), 0)))
        : Phrase.text("opening.tastePotassium", Phrase.of(Figure.of(added.potassium(), 0)));
  }

  private Section nothingToSell() {
    List<Element> elements = new ArrayList<>();
    elements.add(
        Paragraph.of(
            Phrase.text(
                "opening.noneText",
                Phrase.of(Figure.of(comparison.home().dailyLoad())),
                Phrase.of(Figure.of(comparison.home().peakFlow())))));
    List<Phrase> cautions = cautions();
    if (!cautions.isEmpty()) {
      elements.add(check(cautions));
    }
    return new Section("opening", Phrase.text("opening.none"), elements, false);
  }

  private List<Phrase> cautions() {
    Stream<Finding> ofCandidate =
        comparison.recommended().stream().flatMap(candidate -> candidate.findings().stream());
    return Stream.concat(comparison.homeFindings().stream(), ofCandidate)
        .filter(finding -> finding.severity() == Severity.CAUTION)
        .<Phrase>map(Phrase.Found::new)
        .toList();
  }

  private static Topic check(List<Phrase> cautions) {
    return Topic.of(
        "opening.check",
        cautions.isEmpty()
            ? Paragraph.of(Phrase.text("opening.nothing"))
            : new Items(cautions, false));
  }
}
