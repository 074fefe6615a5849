package io.github.brinewright.chance;

import io.github.brinewright.model.Document;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Together;
import io.github.brinewright.model.Topic;
import io.github.brinewright.proposal.DocumentTexts;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The opening of a proposal, read back: topics, a table, and sentences by their patterns. */
final class PageOne {
  private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

  private final Wording words;
  private final Map<String, String> texts;
  private final boolean choices;
  private final List<String> topics = new ArrayList<>();
  private final List<String> said = new ArrayList<>();
  private final Map<String, String> cells = new HashMap<>();

  PageOne(Document document, Wording words) {
    this.words = words;
    choices = document.sections().stream().anyMatch(each -> each.key().equals("choices"));
    texts = DocumentTexts.ours().in(words.locale());
    document.sections().stream()
        .filter(section -> section.key().equals("opening"))
        .map(Section::elements)
        .forEach(this::read);
  }

  private void read(List<? extends Element> elements) {
    elements.forEach(this::read);
  }

  private void read(Element element) {
    if (element instanceof Topic topic) {
      topics.add(topic.label().in(words));
      read(topic.matter());
    } else if (element instanceof Together together) {
      read(together.elements());
    } else if (element instanceof Paragraph paragraph) {
      said.add(paragraph.text().in(words));
    } else if (element instanceof Table table) {
      table.lines().forEach(line -> read(table, line));
    }
  }

  private void read(Table table, Table.Line line) {
    List<Phrase> phrases = line.cells();
    for (int i = 0; i < phrases.size(); i++) {
      cells.put(line.key() + "/" + table.columns().get(i).key(), phrases.get(i).in(words));
    }
  }

  /** Whether what is offered can be chosen on a later page. */
  boolean hasChoices() {
    return choices;
  }

  /** Labels of topics, in their order. */
  List<String> topics() {
    return topics;
  }

  /** All running text. */
  String said() {
    return String.join("\n", said);
  }

  Optional<String> cell(String line, String column) {
    return Optional.ofNullable(cells.get(line + "/" + column));
  }

  /** What stands in the places of a sentence that is said once. */
  Optional<List<String>> found(String key) {
    return all(key).stream().findFirst();
  }

  /** What stands in the places of each sentence of a text, in the order of their numbers. */
  private List<List<String>> all(String key) {
    List<List<String>> all = new ArrayList<>();
    for (String form : List.of(key, key + ".one", key + ".other")) {
      if (texts.containsKey(form)) {
        pattern(texts.get(form)).matcher(said()).results().map(PageOne::parts).forEach(all::add);
      }
    }
    return all.stream().distinct().toList();
  }

  private static List<String> parts(MatchResult match) {
    List<String> parts = new ArrayList<>();
    for (int i = 1; i <= match.groupCount(); i++) {
      parts.add(match.group(i));
    }
    return parts;
  }

  /** The text with its places open; a sentence stands within a line. */
  private static Pattern pattern(String text) {
    Matcher places = PLACE.matcher(text);
    StringBuilder pattern = new StringBuilder();
    int from = 0;
    while (places.find()) {
      pattern.append(Pattern.quote(text.substring(from, places.start()))).append("([^\\n]+?)");
      from = places.end();
    }
    return Pattern.compile(pattern.append(Pattern.quote(text.substring(from))).toString());
  }
}
