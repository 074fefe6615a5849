package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Together;
import java.util.ArrayList;
import java.util.List;

/** What was found in the water, and what the home asks of a softener. */
public final class WaterAndHome {
  private final HomeLoad home;
  private final WaterAnalysis water;
  private final WaterFindings findings;
  private final boolean sized;
  private final Comparison comparison;

  /** The section of a proposal. */
  public WaterAndHome(Subject subject) {
    comparison = subject.comparison();
    sized = subject.showsOptions();
    home = comparison.home();
    water = home.site().water();
    findings = WaterFindings.of(subject);
  }

  /** The section. */
  public Section section() {
    List<Element> elements = new ArrayList<>();
    elements.add(Together.of(Paragraph.of(lead()), findings.rows()));
    findings.more().forEach(note -> elements.add(Paragraph.quiet(note)));
    elements.addAll(WaterOnItsWay.of(comparison));
    if (sized) {
      elements.add(Heading.of(Phrase.text("home.heading")));
      elements.add(new HomeRows(home).rows());
    }
    return new Section("water", Phrase.text("water.heading"), elements, false);
  }

  private Phrase lead() {
    List<Phrase> sentences = new ArrayList<>();
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
}
