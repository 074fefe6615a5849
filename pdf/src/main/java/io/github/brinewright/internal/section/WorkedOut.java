package io.github.brinewright.internal.section;

import io.github.brinewright.finding.Severity;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Cell;
import io.github.brinewright.internal.layout.Columns;
import io.github.brinewright.internal.layout.Paragraph;
import io.github.brinewright.internal.layout.Table;
import io.github.brinewright.trace.Step;
import io.github.brinewright.words.WorkedStep;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Every step of the calculation, so that a reader can redo it. */
public final class WorkedOut {
  private final Kit kit;
  private final Tag tag;
  private final List<String> sources = new ArrayList<>();

  /** The section of a proposal. */
  public WorkedOut(Kit kit) {
    this.kit = kit;
    tag = kit.root().child(Tag.Role.SECTION);
  }

  /** The section as a block. */
  public Block block() {
    boolean any = kit.comparison().recommended().isPresent();
    List<Block> blocks = new ArrayList<>();
    blocks.add(kit.heading(tag, kit.text("worked.heading")));
    blocks.add(kit.body(tag, kit.text(any ? "worked.lead" : "worked.leadNone")).after(8));
    blocks.add(table().after(12));
    blocks.add(tiny(kit.text("worked.efficiency")).after(8));
    blocks.add(kit.subheading(tag, kit.text("worked.sources")).after(14));
    int half = (sources.size() + 1) / 2;
    blocks.add(new Columns(List.of(sources(0, half), sources(half, sources.size())), 18).after(3));
    addNotes(blocks);

    return Block.stack(blocks);
  }

  private Block sources(int from, int to) {
    return Block.stack(
        IntStream.range(from, to)
            .mapToObj(
                i ->
                    new Paragraph(
                        tag.child(Tag.Role.PARAGRAPH).language("en"),
                        number(i) + "  " + sources.get(i),
                        TextStyle.TINY))
            .toList());
  }

  private Block tiny(String text) {
    return new Paragraph(tag.child(Tag.Role.PARAGRAPH), text, TextStyle.TINY);
  }

  private void addNotes(List<Block> blocks) {
    List<String> notes =
        kit.explained().findings().stream()
            .filter(finding -> finding.severity() != Severity.CAUTION)
            .map(kit.words()::finding)
            .toList();
    if (!notes.isEmpty()) {
      blocks.add(kit.subheading(tag, kit.text("worked.findings")).after(14));
      notes.forEach(text -> blocks.add(tiny(text).after(2)));
    }
  }

  private Block table() {
    List<List<Cell>> rows = new ArrayList<>();
    for (Step step : kit.explained().steps()) {
      rows.add(row(kit.words().step(step)));
    }
    List<Cell> header =
        List.of(
            strong(kit.text("worked.step")),
            strong(kit.text("worked.numbers")),
            strong(kit.text("worked.result")).right(),
            strong(kit.text("worked.source")).right());
    return new Table(tag.child(Tag.Role.TABLE), List.of(0.46, 0.32, 0.15, 0.07), header, rows, -1);
  }

  private List<Cell> row(WorkedStep step) {
    return List.of(
        cell(step.name() + " = " + step.formula()).heading(),
        cell(step.numbers()),
        strong(step.result()).right(),
        cell(numberOf(step.source())).right());
  }

  private static Cell cell(String text) {
    return Cell.of(text, TextStyle.TINY);
  }

  private static Cell strong(String text) {
    return Cell.of(text, TextStyle.TINY.bold());
  }

  private String numberOf(String source) {
    if (!sources.contains(source)) {
      sources.add(source);
    }
    return number(sources.indexOf(source));
  }

  private static String number(int index) {
    return String.valueOf(index + 1);
  }
}
