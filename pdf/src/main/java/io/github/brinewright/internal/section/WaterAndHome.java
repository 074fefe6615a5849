package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.HardnessClass;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Together;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What was found in the water, and what the home asks of a softener. */
public final class WaterAndHome {
  /** Least end of the scale, and what it ends on, in grains per gallon. */
  private static final double SHORTEST_SCALE = 30;

  private static final double SCALE_STEP = 10;

  private final HomeLoad home;
  private final WaterAnalysis water;
  private final WaterFindings findings;
  private final boolean sized;

  /** The section of a proposal. */
  public WaterAndHome(Subject subject) {
    Comparison comparison = subject.comparison();
    sized = subject.showsOptions();
    home = comparison.home();
    water = home.site().water();
    findings = WaterFindings.of(subject);
  }

  /** The section. */
  public Section section() {
    List<Element> elements = new ArrayList<>();
    elements.add(Together.of(Paragraph.of(lead()), scale(), findings.rows()));
    findings.more().forEach(note -> elements.add(Paragraph.quiet(note)));
    if (sized) {
      elements.add(Heading.of(Phrase.text("home.heading")));
      elements.add(new HomeRows(home).rows());
    }
    return new Section("water", Phrase.text("water.heading"), elements, false);
  }

  private Phrase lead() {
    List<Phrase> sentences = new ArrayList<>();
    sentences.add(
        Phrase.text(
            "water.lead",
            Phrase.of(Figure.of(water.hardness())),
            new Phrase.InOtherUnit(water.hardness()),
            Phrase.of(HardnessClass.of(water.hardness()))));
    sentences.add(
        water.source() == WaterSource.PUBLIC_SUPPLY
            ? Phrase.text("water.sourcePublic")
            : Phrase.text("water.source", Phrase.of(water.source())));
    water
        .date()
        .map(day -> Phrase.text("water.tested", new Phrase.Day(day)))
        .ifPresent(sentences::add);
    return Phrase.sentences(sentences);
  }

  private Chart scale() {
    HardnessClass own = HardnessClass.of(water.hardness());
    double tens = SCALE_STEP * Math.ceil(water.hardness().grainsPerGallon() / SCALE_STEP);
    Hardness highest = Hardness.ofGrainsPerGallon(Math.max(SHORTEST_SCALE, tens));
    Phrase alternative =
        Phrase.text(
            "water.scale.alt",
            Phrase.of(Figure.of(highest)),
            Phrase.of(Figure.of(water.hardness())),
            Phrase.of(own));
    return new Chart.HardnessScale(
        alternative,
        Arrays.stream(HardnessClass.values()).map(Phrase::of).toList(),
        HardnessClass.limits(),
        water.hardness(),
        own.ordinal(),
        highest);
  }
}
