package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Notes;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Together;
import java.util.ArrayList;
import java.util.List;

/** The candidates side by side, and what sets them apart. */
public final class SideBySide {
  private final Subject subject;

  /** The section of a proposal. */
  public SideBySide(Subject subject) {
    this.subject = subject;
  }

  /** The section. */
  public Section section() {
    List<Element> elements = new ArrayList<>();
    elements.add(
        Together.of(
            Paragraph.of(Phrase.text(lead())),
            new CandidateColumns(subject, subject.columns()).compared(CandidateRow.values())));
    elements.add(Heading.of(Phrase.text("compare.notes")));
    elements.add(notes());
    if (!subject.recommends()) {
      subject.present().map(PresentColumn::assumed).ifPresent(elements::add);
    }
    return new Section("compare", Phrase.text("compare.heading"), elements, false);
  }

  private String lead() {
    if (subject.present().isEmpty()) {
      return subject.recommends() ? "compare.lead" : "compare.leadNone";
    } else if (!subject.recommends()) {
      return "now.compare.leadNone";
    }
    return subject.keeps() ? "now.compare.kept" : "now.compare.lead";
  }

  /** A note on each candidate but the recommended one. */
  private Notes notes() {
    return new Notes(
        subject.columns().stream()
            .filter(candidate -> !subject.comparison().recommends(candidate))
            .map(this::note)
            .toList());
  }

  private Row note(Candidate candidate) {
    Phrase text =
        subject
            .comparison()
            .against(candidate)
            .<Phrase>map(Phrase.Because::new)
            .orElseGet(() -> limitsBroken(candidate));
    return Row.of(candidate.softener().id(), Phrase.plain(candidate.softener().name()), text);
  }

  private static Phrase limitsBroken(Candidate candidate) {
    return Phrase.sentences(candidate.broken().stream().map(Phrase.Found::new).toList());
  }
}
