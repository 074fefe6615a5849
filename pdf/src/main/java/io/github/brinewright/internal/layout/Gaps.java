package io.github.brinewright.internal.layout;

import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Facts;
import io.github.brinewright.model.Fields;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Items;
import io.github.brinewright.model.Notes;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Paragraph.Voice;
import io.github.brinewright.model.References;
import io.github.brinewright.model.Ticks;
import io.github.brinewright.model.Together;
import io.github.brinewright.model.Topic;
import io.github.brinewright.model.WritingLines;
import java.util.List;

/** Room between two elements that follow one another, in points. */
final class Gaps {
  private static final double USUAL = 12;
  private static final double BELOW_HEADING = 6;

  private Gaps() {}

  /** Room between an element and the one before it. */
  static double between(Element above, Element below) {
    Element last = last(above);
    Element first = first(below);
    if (first instanceof Paragraph paragraph) {
      return aboveParagraph(last, paragraph.voice());
    }
    if (first instanceof Heading) {
      return last instanceof Items ? 16 : 15;
    }
    return last instanceof Heading ? BELOW_HEADING : aboveMatter(last, first);
  }

  private static double aboveParagraph(Element above, Voice voice) {
    if (above instanceof Heading heading) {
      return heading.rank() == Heading.Rank.NAME ? 1 : BELOW_HEADING;
    }
    if (above instanceof WritingLines) {
      return 20;
    }
    Voice before = above instanceof Paragraph paragraph ? paragraph.voice() : null;
    return switch (voice) {
      case STRONG -> 8;
      case FINE -> before == Voice.FINE ? 2 : 8;
      case QUIET -> before == Voice.QUIET ? 3 : 7;
      case PLAIN ->
          before == null ? USUAL : before == Voice.STRONG ? 0 : before == Voice.QUIET ? 7 : 6;
    };
  }

  private static double aboveMatter(Element above, Element below) {
    if (below instanceof Facts || above instanceof Facts) {
      return 12;
    }
    if (below instanceof Topic) {
      return 9;
    }
    if (below instanceof Notes) {
      return 16;
    }
    if (below instanceof References) {
      return 3;
    }
    if (below instanceof WritingLines) {
      return above instanceof Ticks ? 14 : 8;
    }
    if (below instanceof Fields) {
      return 0;
    }
    boolean introduced = above instanceof Paragraph paragraph && paragraph.voice() == Voice.QUIET;
    return below instanceof Chart && introduced ? 4 : USUAL;
  }

  private static Element first(Element element) {
    List<Element> all = element instanceof Together together ? together.elements() : List.of();
    return all.isEmpty() ? element : first(all.get(0));
  }

  private static Element last(Element element) {
    List<Element> all = element instanceof Together together ? together.elements() : List.of();
    return all.isEmpty() ? element : last(all.get(all.size() - 1));
  }
}
