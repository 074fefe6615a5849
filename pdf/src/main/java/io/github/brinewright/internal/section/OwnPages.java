package io.github.brinewright.internal.section;

import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Logo;
import io.github.brinewright.job.OwnPage;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Picture;
import io.github.brinewright.model.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** The dealer's own pages, in the language of the document. */
final class OwnPages {
  private OwnPages() {}

  /** A section on its own page for each. */
  static List<Section> of(Dealer dealer) {
    List<OwnPage> pages = dealer.pages();
    return IntStream.range(0, pages.size())
        .mapToObj(i -> section("page." + (i + 1), pages.get(i), dealer.locale()))
        .toList();
  }

  private static Section section(String key, OwnPage page, Locale locale) {
    List<Element> elements = new ArrayList<>();
    String text = page.text().in(locale);
    if (!text.isEmpty()) {
      elements.add(Paragraph.of(Phrase.plain(text)));
    }
    Logo picture = page.picture();
    if (picture != null) {
      elements.add(new Picture(picture, Phrase.plain(page.alternative().in(locale))));
    }
    return new Section(key, Phrase.plain(page.title().in(locale)), elements, true);
  }
}
