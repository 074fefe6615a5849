package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.HomeOutcome;
import io.github.brinewright.finding.VerdictKind;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Many homes on one page, a line each: what could not be done first, then those that need something
 * before they can be quoted, then the rest.
 *
 * @param outcomes of the homes
 */
public record BatchSections(List<HomeOutcome> outcomes) {
  /** In the order in which they ask for work. */
  private static final List<VerdictKind> ORDER =
      List.of(
          VerdictKind.TREAT_FIRST,
          VerdictKind.TEST_FIRST,
          VerdictKind.READY,
          VerdictKind.SOFT_ENOUGH);

  /** A table for each verdict that there is. */
  public List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    List<HomeOutcome> failed =
        outcomes.stream().filter(outcome -> outcome.verdict().isEmpty()).toList();
    if (!failed.isEmpty()) {
      sections.add(
          Section.of(
              "failed", title(Phrase.text("summary.failed"), failed), table("failed", failed)));
    }
    for (VerdictKind kind : ORDER) {
      List<HomeOutcome> alike =
          outcomes.stream().filter(each -> each.verdict().equals(Optional.of(kind))).toList();
      if (!alike.isEmpty()) {
        Phrase heading = Phrase.text("verdict." + kind.name());
        sections.add(Section.of(kind.name(), title(heading, alike), table(kind.name(), alike)));
      }
    }
    return sections;
  }

  private static Phrase title(Phrase heading, List<HomeOutcome> homes) {
    return Phrase.text("summary.title", heading, Phrase.of(Figure.of(homes.size())));
  }

  private static Table table(String key, List<HomeOutcome> homes) {
    return new Table(
        key,
        Phrase.text("summary.home"),
        List.of(
            new Table.Column("unit", Phrase.text("summary.unit"), Table.Kind.TEXT),
            new Table.Column("price", Phrase.text("summary.price"), Table.Kind.VALUES),
            new Table.Column("todo", Phrase.text("summary.todo"), Table.Kind.TEXT)),
        homes.stream()
            .sorted(Comparator.comparing((HomeOutcome each) -> -each.cautions().size()))
            .map(BatchSections::line)
            .toList());
  }

  private static Table.Line line(HomeOutcome outcome) {
    List<Phrase> who =
        outcome.customer().isEmpty()
            ? List.of(Phrase.plain(outcome.home()))
            : List.of(Phrase.plain(outcome.home()), Phrase.plain(outcome.customer()));
    return Table.Line.of(
        outcome.home(),
        new Phrase.Joined(who, " "),
        List.of(
            outcome.softener().map(Phrase::plain).orElse(PresentColumn.NONE),
            outcome.price().map(Figure::of).map(Phrase::of).orElse(PresentColumn.NONE),
            todo(outcome)));
  }

  /** What is to be done first, and how much there is besides. */
  private static Phrase todo(HomeOutcome outcome) {
    if (!outcome.failure().isEmpty()) {
      return Phrase.plain(outcome.failure());
    }
    List<Phrase> todo = new ArrayList<>();
    outcome.reasons().stream().findFirst().map(Phrase.Change::new).ifPresent(todo::add);
    add(todo, "summary.more", outcome.reasons().size() - 1);
    add(todo, "summary.cautions", outcome.cautions().size());
    return todo.isEmpty() ? PresentColumn.NONE : Phrase.sentences(todo);
  }

  private static void add(List<Phrase> todo, String key, int count) {
    if (count > 0) {
      todo.add(Phrase.text(key, Phrase.of(Figure.of(count))));
    }
  }
}
