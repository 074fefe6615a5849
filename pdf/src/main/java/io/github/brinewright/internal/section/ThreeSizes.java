package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Notes;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Section;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The homeowner's page: a smaller one, the recommended one, a bigger one, and what changes. */
public final class ThreeSizes {
  private static final int SIZES = 3;
  private static final CandidateRow[] ROWS = {
    CandidateRow.PRICE,
    CandidateRow.YEARLY,
    CandidateRow.LIFE,
    CandidateRow.EXPECTED,
    CandidateRow.SALT_YEAR,
    CandidateRow.FILLINGS,
    CandidateRow.WATER_YEAR,
    CandidateRow.SERVICE,
    CandidateRow.LIMITS
  };

  private final Subject subject;
  private final Comparison comparison;
  private final List<Candidate> candidates;

  /** The page of a home. */
  public ThreeSizes(Subject subject) {
    this.subject = subject;
    comparison = subject.comparison();
    candidates = comparison.columns(SIZES);
  }

  /** The sections of the page. */
  public List<Section> sections() {
    Section sizes =
        Section.of(
            "three",
            Phrase.NONE,
            Paragraph.of(lead()),
            new CandidateColumns(comparison, candidates).compared(ROWS),
            new Notes(candidates.stream().map(this::note).toList()));
    return List.of(sizes, costs());
  }

  private Phrase lead() {
    return Phrase.text(
        "three.lead",
        Phrase.of(Figure.of(comparison.home().site().water().hardness())),
        Phrase.of(Figure.of(comparison.home().use().expected())),
        new Phrase.Day(subject.date()));
  }

  private Section costs() {
    List<Element> elements =
        new ArrayList<>(List.of(new CostParts(comparison, candidates).chart()));
    Stream.of(Caution.LOCAL_RULES, Caution.NOT_A_PURIFIER, Caution.SODIUM)
        .forEach(caution -> elements.add(Paragraph.quiet(new Phrase.Warned(caution))));
    return new Section("costs", Phrase.text(CostParts.TITLE), elements, false);
  }

  private Row note(Candidate candidate) {
    Phrase text =
        comparison
            .against(candidate)
            .or(comparison::whyRecommended)
            .<Phrase>map(Phrase.Because::new)
            .orElseGet(() -> firstLimitBroken(candidate));
    return Row.of(candidate.softener().id(), Phrase.plain(candidate.softener().name()), text);
  }

  private static Phrase firstLimitBroken(Candidate candidate) {
    return candidate.broken().stream()
        .findFirst()
        .<Phrase>map(Phrase.Found::new)
        .orElse(Phrase.NONE);
  }
}
