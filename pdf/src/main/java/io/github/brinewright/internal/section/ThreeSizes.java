package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Notes;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Section;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The homeowner's page: a smaller one, the recommended one, a bigger one, and what changes. */
public final class ThreeSizes {
  private static final int SIZES = 3;
  private static final Set<Caution> GENERAL =
      EnumSet.of(
          Caution.LOCAL_RULES,
          Caution.NOT_A_PURIFIER,
          Caution.SODIUM,
          Caution.SODIUM_IN_HOT_WATER,
          Caution.PRE_TREATMENT);
  private static final CandidateRow[] ROWS = {
    CandidateRow.PRICE,
    CandidateRow.LIFE,
    CandidateRow.HARD,
    CandidateRow.LIMITS,
    CandidateRow.MARGINS
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
    List<Section> sections = new ArrayList<>();
    sections.add(new HomeVerdict(comparison).compact());
    if (subject.showsOptions()) {
      sections.add(sizes());
    }
    // Where a treatment is told of, the grid would be a second page.
    if (subject.recommends() && comparison.treatment().isEmpty()) {
      sections.add(grid());
    }
    sections.add(cautions());
    return sections;
  }

  private Section sizes() {
    List<Element> elements = new ArrayList<>();
    subject.present().map(PresentColumn::study).ifPresent(study -> addPresent(elements, study));
    elements.add(lead());
    elements.add(new CandidateColumns(subject, candidates).compared(ROWS));
    elements.add(new Notes(others()));
    return new Section("three", Phrase.NONE, elements, false);
  }

  /** What becomes of the softener that is in the house. */
  private static void addPresent(List<Element> elements, ServiceStudy study) {
    elements.add(Paragraph.strong(new Phrase.Advised(study.advice())));
    elements.add(Paragraph.quiet(Phrase.sentences(new PresentAdvice(study).sentences())));
  }

  /** What sets the others apart from the recommended one, or all by the limits that they break. */
  private List<Row> others() {
    return candidates.stream()
        .filter(candidate -> !comparison.recommends(candidate))
        .map(this::note)
        .toList();
  }

  private Section grid() {
    SizesAndDosages grid = SizesAndDosages.of(subject, candidates);
    return Section.of(
        "grid", Phrase.text("grid.heading"), Paragraph.fine(grid.cells()), grid.table());
  }

  /** What the page is about. */
  public Phrase subject() {
    return Phrase.text(
        "three.lead",
        Phrase.of(Figure.of(comparison.home().site().water().hardness())),
        Phrase.of(Figure.of(comparison.home().use().expected())),
        new Phrase.Day(subject.date()));
  }

  /** Why the recommended one is, and what even that gives up; or that there is none. */
  private Paragraph lead() {
    List<Phrase> sentences = new ArrayList<>();
    comparison.whyRecommended().map(Phrase.Because::new).ifPresent(sentences::add);
    comparison.recommended().map(Opening::givesUp).ifPresent(sentences::addAll);
    return Paragraph.quiet(
        sentences.isEmpty() ? Phrase.text("opening.none") : Phrase.sentences(sentences));
  }

  private Section cautions() {
    List<Element> elements = new ArrayList<>();
    List<Finding> own = comparison.cautions();
    if (!own.isEmpty()) {
      elements.add(BeforeYouDecide.compact(own));
    }
    List<Phrase> general =
        Caution.applying(comparison.home(), comparison.verdict(), Set.of()).stream()
            .filter(GENERAL::contains)
            .<Phrase>map(Phrase.Warned::new)
            .toList();
    elements.add(Paragraph.fine(Phrase.sentences(general)));
    return new Section("cautions", Phrase.text("opening.check"), elements, false);
  }

  private Row note(Candidate candidate) {
    Phrase text =
        comparison
            .against(candidate)
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
