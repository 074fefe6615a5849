package io.github.brinewright.internal.section;

import io.github.brinewright.internal.chart.DayMarks;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.softener.Control;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.stream.Collectors;

/** The regenerations of one year under each control, day by day. */
record RegenerationDays(Kit kit, HomeStudy study, Tag tag) {
  Block block() {
    List<Control> controls = List.copyOf(study.controls().keySet());
    Block title = kit.subheading(tag, kit.text("year.days"));
    DayMarks marks =
        new DayMarks(controls.stream().map(this::row).toList(), kit.text("year.days.axis"));
    String inWords = kit.text("year.days.alt", Figure.of(inWords(controls)));
    Block drawing = kit.drawing(tag, inWords, marks);
    return Block.stack(List.of(title, drawing.after(2)));
  }

  private DayMarks.Row row(Control control) {
    boolean recommended = control == study.recommended();
    return new DayMarks.Row(
        kit.words().term(control),
        study.typical().regenerations().get(control),
        String.valueOf(study.typical().total(control)),
        recommended ? kit.accent() : Ink.TEXT,
        recommended);
  }

  private String inWords(List<Control> controls) {
    return controls.stream().map(this::inWords).collect(Collectors.joining(" "));
  }

  private String inWords(Control control) {
    String months =
        study.typical().byMonth(control).stream()
            .map(String::valueOf)
            .collect(Collectors.joining(", "));
    return kit.text(
        "year.days.row",
        Figure.of(control),
        Figure.of(study.typical().total(control)),
        Figure.of(months));
  }
}
