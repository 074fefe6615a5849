package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.model.Columns;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Phrase.Worked.Part;
import io.github.brinewright.model.References;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Step;
import java.util.ArrayList;
import java.util.List;

/** Every step of the calculation, so that a reader can redo it. */
public final class WorkedOut {
  private final Subject subject;
  private final Candidate explained;
  private final List<Source> sources;

  /** The section of a proposal. */
  public WorkedOut(Subject subject) {
    this.subject = subject;
    explained = subject.explained();
    sources = explained.steps().stream().map(Step::source).distinct().toList();
  }

  /** The section, on pages of its own. */
  public Section section() {
    List<Element> elements = new ArrayList<>();
    elements.add(Paragraph.of(Phrase.text(lead())));
    elements.add(table());
    elements.add(Paragraph.fine(Phrase.text("worked.efficiency")));
    elements.add(Heading.of(Phrase.text("worked.sources")));
    elements.add(references());
    addNotes(elements);
    return new Section("worked", Phrase.text("worked.heading"), elements, true);
  }

  private String lead() {
    if (subject.recommends()) {
      return subject.keeps() ? "now.worked.lead" : "worked.lead";
    }
    return "worked.leadNone";
  }

  private Columns references() {
    int half = (sources.size() + 1) / 2;
    return new Columns(
        List.of(
            List.of(new References(1, sources.subList(0, half))),
            List.of(new References(half + 1, sources.subList(half, sources.size())))));
  }

  private void addNotes(List<Element> elements) {
    List<Element> notes = new ArrayList<>();
    explained.findings().stream()
        .filter(finding -> finding.severity() != Severity.CAUTION)
        .forEach(finding -> notes.add(Paragraph.fine(new Phrase.Found(finding))));
    explained.marginsNear().stream()
        .map(check -> Phrase.text("worked.near", new Phrase.Margin(check)))
        .forEach(text -> notes.add(Paragraph.fine(text)));
    if (!notes.isEmpty()) {
      elements.add(Heading.of(Phrase.text("worked.findings")));
      elements.addAll(notes);
    }
  }

  private Table table() {
    List<Table.Column> columns =
        List.of(
            new Table.Column("worked.numbers", Phrase.text("worked.numbers"), Table.Kind.TEXT),
            new Table.Column("worked.result", Phrase.text("worked.result"), Table.Kind.MAIN),
            new Table.Column("worked.source", Phrase.text("worked.source"), Table.Kind.VALUES));
    List<Table.Line> lines = explained.steps().stream().map(this::line).toList();
    return new Table("worked", Phrase.text("worked.step"), columns, lines);
  }

  private Table.Line line(Step step) {
    Phrase number = Phrase.of(Figure.of(sources.indexOf(step.source()) + 1));
    return Table.Line.of(
            step.kind().name(),
            new Phrase.Worked(step, Part.FORMULA),
            List.of(
                new Phrase.Worked(step, Part.NUMBERS),
                new Phrase.Worked(step, Part.RESULT),
                number))
        .from(step.source());
  }
}
