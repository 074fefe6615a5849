package io.github.brinewright.documents;

import io.github.brinewright.model.Columns;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Facts;
import io.github.brinewright.model.Field;
import io.github.brinewright.model.Fields;
import io.github.brinewright.model.Notes;
import io.github.brinewright.model.Phrase;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Everything in a document that has a label, by its keys: the section, the element, the row and, in
 * a table, the column.
 */
final class Labelled {
  private final Wording words;
  private final Map<String, String> values = new LinkedHashMap<>();
  private final Map<String, String> labels = new LinkedHashMap<>();
  private final List<List<String>> drawn = new ArrayList<>();

  Labelled(Document document, Wording words) {
    this.words = words;
    for (Section section : document.sections()) {
      section.elements().forEach(element -> read(section.key(), element));
    }
  }

  /** What stands at each label, in the language. */
  Map<String, String> values() {
    return values;
  }

  /** The labels themselves, in the language. */
  Map<String, String> labels() {
    return labels;
  }

  /** Rows of texts that stand beside or below one another, in the language. */
  List<List<String>> drawn() {
    return drawn;
  }

  private void draw(Phrase... phrases) {
    drawn.add(Stream.of(phrases).map(phrase -> phrase.in(words)).toList());
  }

  private void read(String section, Element element) {
    if (element instanceof Rows rows) {
      rows.rows().forEach(row -> read(section + "/" + rows.key(), row));
      rows.rows().forEach(row -> draw(row.label(), row.value(), row.note()));
    } else if (element instanceof Facts facts) {
      facts.rows().forEach(row -> read(section + "/facts", row));
      facts.rows().forEach(row -> draw(row.value(), row.label()));
    } else if (element instanceof Notes notes) {
      notes.rows().forEach(row -> read(section + "/notes", row));
      notes.rows().forEach(row -> draw(row.label(), row.value()));
    } else if (element instanceof Table table) {
      read(section + "/" + table.key(), table);
    } else if (element instanceof Together together) {
      together.elements().forEach(part -> read(section, part));
    } else if (element instanceof Topic topic) {
      topic.matter().forEach(part -> read(section, part));
    } else if (element instanceof Columns columns) {
      columns.columns().forEach(column -> column.forEach(part -> read(section, part)));
    } else if (element instanceof Fields fields) {
      fields.entries().forEach(entry -> read(section, entry.field()));
    } else if (element instanceof Ticks ticks) {
      ticks.fields().forEach(field -> read(section, field));
    } else if (element instanceof WritingLines lines) {
      lines.lines().forEach(line -> read(section, line));
    }
  }

  private void read(String where, Row row) {
    put(where + "/" + row.key(), row.label(), row.value());
    if (!row.note().isEmpty()) {
      put(where + "/" + row.key() + "/note", row.label(), row.note());
    }
  }

  private void read(String where, Table table) {
    for (Table.Line line : table.lines()) {
      List<Phrase> row = new ArrayList<>(List.of(line.label()));
      row.addAll(line.cells());
      draw(row.toArray(Phrase[]::new));
      for (int i = 0; i < table.columns().size(); i++) {
        Table.Column column = table.columns().get(i);
        String key = where + "/" + line.key() + "/" + column.key();
        put(key, line.label(), line.cells().get(i));
      }
      if (line.field() != null) {
        read(where, line.field());
      }
    }
    for (Table.Column column : table.columns()) {
      put(where + "/" + column.key(), Phrase.NONE, column.head());
      if (column.field() != null) {
        read(where, column.field());
      }
    }
  }

  private void read(String section, Field field) {
    String choices =
        field.choices().stream()
            .map(choice -> choice.value() + "=" + choice.name().in(words))
            .collect(Collectors.joining("|"));
    String needed = field.needed() ? " *" : "";
    String content = field.kind() + needed + " [" + field.value() + "] " + choices;
    String place = field.kind() == Field.Kind.ONE_OF ? "=" + field.value() : "";
    put(section + "/" + field.name() + place, field.label(), Phrase.plain(content.strip()));
  }

  private void read(String section, WritingLines.Line line) {
    read(section, line.field());
    put(section + "/" + line.field().name() + "/caption", line.field().label(), line.caption());
  }

  private void put(String key, Phrase label, Phrase value) {
    if (values.put(key, value.in(words)) != null) {
      throw new AssertionError("two values have the key " + key);
    }
    labels.put(key, label.in(words));
  }

  /** The keys, for messages. */
  @Override
  public String toString() {
    return String.join("\n", List.copyOf(values.keySet()));
  }
}
