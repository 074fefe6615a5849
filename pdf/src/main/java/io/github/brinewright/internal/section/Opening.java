package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.model.Columns;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Together;
import io.github.brinewright.model.Topic;
import io.github.brinewright.sizing.AddedIons;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What we recommend, why, and what to know before deciding. Where a softener is in the house, it
 * says what becomes of that: before anything new where it should be kept.
 */
public final class Opening {
  /** So many that a picture gives way to them. */
  private static final int MANY_CAUTIONS = 3;

  private final Subject subject;
  private final Comparison comparison;
  private final Optional<PresentAdvice> present;

  /** The first section of a proposal. */
  public Opening(Subject subject) {
    this.subject = subject;
    comparison = subject.comparison();
    present = subject.present().map(PresentColumn::study).map(PresentAdvice::new);
  }

  /** The section. */
  public Section section() {
    return comparison.recommended().map(this::recommend).orElseGet(this::nothingToSell);
  }

  private Section recommend(Candidate candidate) {
    List<Element> elements = new ArrayList<>();
    elements.add(water(candidate));
    if (subject.keeps()) {
      present.map(PresentAdvice::topic).ifPresent(elements::add);
      if (!subject.offersChoices()) {
        elements.add(recommended(candidate));
      }
    } else {
      addNew(elements, candidate);
    }
    taste(candidate)
        .filter(text -> !subject.keeps() || changesSalt(candidate))
        .map(text -> Topic.of("opening.taste", Paragraph.of(text)))
        .ifPresent(elements::add);
    elements.add(BeforeYouDecide.topic(comparison.cautions()));
    elements.add(new NextSteps(subject).topic());
    return new Section("opening", Phrase.NONE, elements, false);
  }

  /** How hard the water is and, beside that, the unit to scale. */
  private Columns water(Candidate candidate) {
    List<Element> scale = new WaterOnScale(comparison.home().site().water()).elements();
    return subject.keeps()
        ? new Columns(scale.stream().map(List::of).toList())
        : new Columns(List.of(scale, List.of(new UnitDrawn(candidate.softener()).chart())));
  }

  /**
   * What is to be bought, with its figures: those of a present softener have them beside its own.
   */
  private void addNew(List<Element> elements, Candidate candidate) {
    elements.add(recommended(candidate));
    if (present.filter(PresentAdvice::showsRecommended).isEmpty()) {
      elements.add(new DealFigures(candidate, comparison.priceList().credit()).facts());
    }
    present.map(PresentAdvice::topic).ifPresent(elements::add);
    if (roomForBars() && candidate.hardWater().isPresent()) {
      elements.add(
          Together.of(
              Heading.of(Phrase.text("opening.hard")), new HardWaterBars(candidate).chart()));
    }
    if (!subject.offersChoices()) {
      elements.add(cheapest(candidate));
    }
  }

  /** Cautions go before pictures, and a softener in the house has a table of its own. */
  private boolean roomForBars() {
    return present.isEmpty() && comparison.cautions().size() < MANY_CAUTIONS;
  }

  private boolean changesSalt(Candidate candidate) {
    return comparison
        .home()
        .site()
        .present()
        .filter(now -> now.regenerant() == candidate.softener().regenerant())
        .isEmpty();
  }

  private Topic recommended(Candidate candidate) {
    List<Element> matter = new ArrayList<>();
    Paragraph why = Paragraph.of(new Phrase.Because(comparison.whyRecommended().orElseThrow()));
    if (subject.keeps()) {
      matter.add(Together.of(withSetting(candidate), why));
    } else {
      matter.add(new Heading(Phrase.plain(candidate.softener().name()), Heading.Rank.NAME));
      matter.add(Paragraph.quiet(setting(candidate)));
      matter.add(why);
    }
    givesUp(candidate).forEach(text -> matter.add(Paragraph.of(text)));
    return new Topic(Phrase.text(title()), matter);
  }

  private String title() {
    if (subject.keeps()) {
      return "now.ifNew";
    }
    return comparison.verdict().isProvisional() ? "opening.provisional" : "opening.recommend";
  }

  /** The margins that even the recommended one breaks. */
  static List<Phrase> givesUp(Candidate candidate) {
    return candidate.marginsBroken().stream()
        .map(check -> Phrase.text("opening.gives", new Phrase.Margin(check)))
        .toList();
  }

  /** The key of a text, or of one that speaks of new ones alone where one is in the house. */
  private String ofNew(String key, String amongNew) {
    return present.isPresent() ? amongNew : key;
  }

  private static Paragraph withSetting(Candidate candidate) {
    Phrase name = Phrase.plain(candidate.softener().name());
    return Paragraph.strong(new Phrase.Joined(List.of(name, setting(candidate)), ", "));
  }

  private static Phrase setting(Candidate candidate) {
    return Phrase.text(
        "opening.setting",
        Phrase.of(candidate.setup().control()),
        Phrase.of(Figure.of(candidate.salt(), 1)));
  }

  /** The cheapest that fits: what it would save, and what it gives up. */
  private Topic cheapest(Candidate chosen) {
    Candidate cheapest = comparison.cheapestThatFits().orElseThrow();
    String title = ofNew("opening.cheapest", "now.cheapest");
    if (cheapest.equals(chosen)) {
      return Topic.of(
          title, Paragraph.of(Phrase.text(ofNew("opening.cheapestIsThis", "now.cheapestIsThis"))));
    }
    List<Element> matter = new ArrayList<>();
    matter.add(withSetting(cheapest));
    comparison
        .against(cheapest)
        .ifPresent(reason -> matter.add(Paragraph.of(new Phrase.Because(reason))));
    return new Topic(Phrase.text(title), matter);
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
                Phrase.of(Figure.of(added.sodiumMilligramsPerDay(), 0)),
                Phrase.of(Figure.of(added.sodiumMilligramsPerQuarterLiter(), 0)))
            : Phrase.text(
                "opening.tastePotassium", Phrase.of(Figure.of(added.potassiumInColdWater(), 0))));
  }

  /** Because nothing fits, or because the verdict permits nothing yet. */
  private Section nothingToSell() {
    List<Element> elements = new ArrayList<>();
    elements.add(
        new Columns(List.of(new WaterOnScale(comparison.home().site().water()).elements())));
    boolean permitted = comparison.verdict().permitsRecommendation();
    if (permitted) {
      elements.add(
          Paragraph.of(
              Phrase.text(
                  "opening.noneText",
                  Phrase.of(Figure.of(comparison.home().dailyLoad())),
                  Phrase.of(Figure.of(comparison.home().peakFlow())))));
    }
    if (permitted) {
      present.map(PresentAdvice::topic).ifPresent(elements::add);
    }
    List<Finding> cautions = comparison.cautions();
    if (!cautions.isEmpty()) {
      elements.add(BeforeYouDecide.topic(cautions));
    }
    Phrase title = permitted ? Phrase.text("opening.none") : Phrase.NONE;
    return new Section("opening", title, elements, false);
  }
}
