package io.github.brinewright.documents;

import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Columns;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Facts;
import io.github.brinewright.model.Field;
import io.github.brinewright.model.Fields;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Items;
import io.github.brinewright.model.Notes;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Picture;
import io.github.brinewright.model.References;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Ticks;
import io.github.brinewright.model.Together;
import io.github.brinewright.model.Topic;
import io.github.brinewright.model.WritingLines;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** A whole document as plain text, with everything that its model says. */
public final class WholeText {
  private final Wording words;
  private final StringBuilder out = new StringBuilder();

  private WholeText(Wording words) {
    this.words = words;
  }

  /** All that a document says, line by line. */
  public static String of(Document document, Wording words) {
    WholeText text = new WholeText(words);
    text.line("", document.kind() + ": " + text.in(document.title()));
    text.line("", document.letterhead().name(), document.letterhead().details());
    text.line("# ", text.in(document.heading()), text.all(document.details()));
    document.sections().forEach(text::section);
    return text.out.toString();
  }

  private String in(Phrase phrase) {
    return phrase.in(words).replace('\u00A0', ' ').replace('\u202F', ' ');
  }

  private List<String> all(List<Phrase> phrases) {
    return phrases.stream().map(this::in).toList();
  }

  private void line(String mark, String first, List<String> more) {
    List<String> all = new ArrayList<>(List.of(first));
    all.addAll(more);
    line(mark, String.join(" | ", all));
  }

  private void line(String mark, String text) {
    out.append((mark + text).stripTrailing()).append('\n');
  }

  private void section(Section section) {
    out.append('\n');
    String page = section.ownPage() ? " (new page)" : "";
    line("## ", section.key() + page + ": " + in(section.title()));
    section.elements().forEach(this::element);
  }

  private void element(Element element) {
    if (element instanceof Paragraph paragraph) {
      line(mark(paragraph.voice()), in(paragraph.text()));
    } else if (element instanceof Heading heading) {
      line("### ", in(heading.text()) + (heading.rank() == Heading.Rank.NAME ? " !" : ""));
    } else if (element instanceof Items items) {
      items.items().forEach(item -> line(items.compact() ? "- " : "* ", in(item)));
    } else if (element instanceof Rows rows) {
      line(rows.key() + ": ", String.join(" | ", all(rows.heads())));
      rows.rows().forEach(this::row);
    } else if (element instanceof Facts facts) {
      facts.rows().forEach(this::row);
    } else if (element instanceof Notes notes) {
      notes.rows().forEach(this::row);
    } else if (element instanceof Table table) {
      table(table);
    } else if (element instanceof Chart chart) {
      line("chart: ", in(chart.alternative()));
      line("  ", chart(chart));
    } else {
      arranged(element);
    }
  }

  private void arranged(Element element) {
    if (element instanceof Together together) {
      line("", "(");
      together.elements().forEach(this::element);
      line("", ")");
    } else if (element instanceof Picture picture) {
      line("picture: ", in(picture.alternative()));
    } else if (element instanceof Topic topic) {
      line("> ", in(topic.label()));
      topic.matter().forEach(this::element);
    } else if (element instanceof Columns columns) {
      columns.columns().forEach(column -> column.forEach(this::element));
    } else if (element instanceof References references) {
      int number = references.first();
      for (var source : references.sources()) {
        line("[" + number++ + "] ", words.source(source));
      }
    } else if (element instanceof Fields fields) {
      line("fields in columns: ", String.valueOf(fields.columns()));
      fields.entries().forEach(entry -> field(entry.field(), " over " + entry.span()));
    } else if (element instanceof Ticks ticks) {
      ticks.fields().forEach(field -> field(field, ""));
    } else if (element instanceof WritingLines lines) {
      lines.lines().forEach(line -> field(line.field(), " below: " + in(line.caption())));
    } else {
      throw new AssertionError("not known: " + element);
    }
  }

  private static String mark(Paragraph.Voice voice) {
    return switch (voice) {
      case PLAIN -> "";
      case STRONG -> "** ";
      case QUIET -> "~ ";
      case FINE -> ". ";
    };
  }

  private void row(Row row) {
    String total = row.total() ? "= " : "  ";
    line(total + row.key() + ": ", in(row.label()), all(List.of(row.value(), row.note())));
  }

  private void table(Table table) {
    line(table.key() + ": ", in(table.corner()), List.of());
    for (Table.Column column : table.columns()) {
      line("  column " + column.key() + ": ", in(column.head()) + " " + column.kind());
    }
    for (Table.Line line : table.lines()) {
      String source = line.source() == null ? "" : " (" + line.source().id() + ")";
      String total = line.total() ? "= " : "  ";
      String marked = line.marked().isEmpty() ? "" : " ruled " + new TreeSet<>(line.marked());
      line(total + line.key() + source + marked + ": ", in(line.label()), all(line.cells()));
    }
  }

  private void field(Field field, String more) {
    String choices =
        field.choices().stream()
            .map(choice -> choice.value() + "=" + in(choice.name()))
            .collect(Collectors.joining(" | "));
    String needed = field.needed() ? " needed" : "";
    line(
        "  " + field.kind() + " " + field.name() + needed + more + ": ",
        in(field.label()) + " [" + field.value() + "] " + choices);
  }

  private String chart(Chart chart) {
    if (chart instanceof Chart.HardnessScale scale) {
      return all(scale.classes()) + " " + scale.own() + " to " + scale.highest();
    } else if (chart instanceof Chart.RunningTotal total) {
      return in(total.axis())
          + total.series().stream()
              .map(one -> " " + one.key() + " " + in(one.name()) + " " + one.totals())
              .collect(Collectors.joining(";"));
    } else if (chart instanceof Chart.StackedBars bars) {
      return all(bars.parts())
          + bars.bars().stream()
              .map(bar -> named(bar.key(), bar.name(), bar.total(), bar.chosen()) + bar.values())
              .collect(Collectors.joining(";"));
    } else if (chart instanceof Chart.DayMarks marks) {
      return in(marks.axis())
          + marks.days().stream()
              .map(row -> named(row.key(), row.name(), row.total(), row.chosen()) + days(row))
              .collect(Collectors.joining(";"));
    } else if (chart instanceof Chart.Curve curve) {
      return curve.curve().stream().map(WholeText::point).collect(Collectors.joining(" "))
          + curve.stocked().stream()
              .map(each -> (each.chosen() ? " !" : " ") + point(each.at()))
              .collect(Collectors.joining());
    } else if (chart instanceof Chart.UnitDrawing drawing) {
      return drawing.vessels()
          + " of "
          + drawing.vessel()
          + ", "
          + drawing.brineTank()
          + "; "
          + in(drawing.height())
          + "; "
          + in(drawing.width());
    } else if (chart instanceof Chart.Levels levels) {
      return levels.bars().stream()
          .map(
              bar ->
                  named(bar.key(), bar.name(), bar.label(), bar.chosen())
                      + " "
                      + Math.round(1000 * bar.share()))
          .collect(Collectors.joining(";"));
    }
    throw new AssertionError("not known: " + chart);
  }

  private String named(String key, Phrase name, Phrase total, boolean chosen) {
    return " " + key + " " + in(name) + " " + in(total) + (chosen ? " ! " : " ");
  }

  private static String days(Chart.Days days) {
    return days.events().stream().map(String::valueOf).collect(Collectors.joining());
  }

  private static String point(Chart.Point point) {
    return String.format(
        Locale.ROOT,
        "%.2f/%.0f",
        point.dosage().poundsPerCubicFoot(),
        point.capacity().grainsPerCubicFoot());
  }
}
