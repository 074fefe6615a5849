package io.github.brinewright.internal.screen;

import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Columns;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Facts;
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
import io.github.brinewright.model.Together;
import io.github.brinewright.model.Topic;
import io.github.brinewright.proposal.ChartSvg;
import io.github.brinewright.words.Wording;
import java.util.Base64;
import java.util.List;
import java.util.Locale;

/**
 * Pieces of documents as HTML. Fields that a document has for pen or reader are left out: the page
 * has its own.
 *
 * @param words in the reader's language
 * @param charts draws charts
 */
record Pieces(Wording words, ChartSvg charts) {
  /** A section below a heading of the page. */
  Html section(Section section) {
    Html html = new Html().open("section", "class", "piece");
    if (!section.title().isEmpty()) {
      html.element("h3", section.title().in(words));
    }
    return html.add(all(section.elements())).close("section");
  }

  Html all(List<? extends Element> elements) {
    Html html = new Html();
    elements.forEach(element -> html.add(one(element)));
    return html;
  }

  private Html one(Element element) {
    if (element instanceof Together together) {
      return all(together.elements());
    } else if (element instanceof Columns columns) {
      return columns(columns);
    } else if (element instanceof Topic topic) {
      return new Html().element("h4", topic.label().in(words)).add(all(topic.matter()));
    } else if (element instanceof Table table) {
      return new Tables(words).table(table);
    } else if (element instanceof Rows rows) {
      return new Tables(words).rows(rows);
    } else if (element instanceof Chart chart) {
      return new ChartFigure(words, charts).figure(chart);
    }
    return plain(element);
  }

  private Html plain(Element element) {
    if (element instanceof Heading heading) {
      return new Html().element("h4", heading.text().in(words));
    } else if (element instanceof Paragraph paragraph) {
      return paragraph(paragraph);
    } else if (element instanceof Items items) {
      return items(items.items());
    } else if (element instanceof Notes notes) {
      return named(notes.rows());
    } else if (element instanceof Facts facts) {
      return named(facts.rows());
    } else if (element instanceof References references) {
      return items(references.sources().stream().map(Phrase.Cited::new).toList());
    } else if (element instanceof Picture picture) {
      return picture(picture);
    }
    return new Html();
  }

  private Html columns(Columns columns) {
    Html html = new Html().open("div", "class", "columns");
    columns.columns().forEach(column -> html.open("div").add(all(column)).close("div"));
    return html.close("div");
  }

  private Html paragraph(Paragraph paragraph) {
    String voice = paragraph.voice().name().toLowerCase(Locale.ROOT);
    return new Html().element("p", paragraph.text().in(words), "class", "voice-" + voice);
  }

  private Html items(List<? extends Phrase> items) {
    Html html = new Html().open("ul");
    items.forEach(item -> html.element("li", item.in(words)));
    return html.close("ul");
  }

  private Html named(List<Row> rows) {
    if (rows.isEmpty()) {
      return new Html();
    }
    Html html = new Html().open("dl");
    rows.forEach(
        row -> html.element("dt", row.label().in(words)).element("dd", row.value().in(words)));
    return html.close("dl");
  }

  private Html picture(Picture picture) {
    byte[] content = picture.picture().content();
    String type = content.length > 0 && content[0] == (byte) 0x89 ? "png" : "jpeg";
    String data = "data:image/" + type + ";base64," + Base64.getEncoder().encodeToString(content);
    return new Html().open("img", "src", data, "alt", picture.alternative().in(words));
  }
}
