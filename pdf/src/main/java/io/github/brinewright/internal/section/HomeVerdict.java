package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.Item;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Verdict;
import io.github.brinewright.finding.VerdictKind;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Items;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Topic;
import java.util.ArrayList;
import java.util.List;

/** What is to be said of the home before any softener is named: first in every document. */
public final class HomeVerdict {
  private final Comparison comparison;
  private final Verdict verdict;

  /** The verdict of a comparison. */
  public HomeVerdict(Comparison comparison) {
    this.comparison = comparison;
    verdict = comparison.verdict();
  }

  /** The first section of a document. */
  public Section section() {
    List<Element> matter = new ArrayList<>();
    matter.add(Paragraph.strong(kind()));
    Phrase meaning = Phrase.sentences(meaning());
    if (!meaning.isEmpty()) {
      matter.add(Paragraph.of(meaning));
    }
    addReasons(matter, false);
    return Section.of("verdict", Phrase.NONE, new Topic(Phrase.text("verdict.label"), matter));
  }

  /** The same where there is little room. */
  Section compact() {
    List<Element> elements = new ArrayList<>();
    elements.add(Paragraph.quiet(Phrase.sentences(meaning())));
    addReasons(elements, true);
    return new Section("verdict", kind(), elements, false);
  }

  private Phrase kind() {
    return Phrase.text("verdict." + verdict.kind().name());
  }

  private void addReasons(List<Element> matter, boolean compact) {
    List<Phrase> reasons =
        verdict.reasons().stream()
            .filter(reason -> !compact || !comparison.isAnswered(reason))
            .map(this::reason)
            .toList();
    if (compact && reasons.size() == 1) {
      matter.add(Paragraph.quiet(reasons.get(0)));
    } else if (!reasons.isEmpty()) {
      matter.add(new Items(reasons, compact));
    }
  }

  /** With what would change it, where that is not sold with the softener. */
  private Phrase reason(Finding reason) {
    return comparison.isAnswered(reason)
        ? new Phrase.Found(reason)
        : Phrase.text("verdict.reason", new Phrase.Found(reason), new Phrase.Change(reason));
  }

  /** What follows from the verdict for this document. */
  private List<Phrase> meaning() {
    List<Phrase> meaning = new ArrayList<>();
    if (!verdict.permitsRecommendation()) {
      meaning.add(Phrase.text(none()));
      return meaning;
    }
    if (verdict.isConditional()) {
      meaning.add(treated());
    }
    if (verdict.isProvisional()) {
      meaning.add(Phrase.text("verdict.provisional"));
    }
    if (verdict.kind() == VerdictKind.READY) {
      meaning.add(Phrase.text("verdict.nothing"));
    }
    return meaning;
  }

  private String none() {
    if (verdict.kind() == VerdictKind.SOFT_ENOUGH) {
      return "verdict.noneAsked";
    }
    boolean some = comparison.priceList().items().stream().anyMatch(Item::changesWater);
    return some ? "verdict.noneFits" : "verdict.noneUntilTreated";
  }

  /** The water that all is sized on: behind what is sold with it, or as it is stated. */
  private Phrase treated() {
    Phrase water = TreatedAs.stated(comparison.home().site());
    return WaterOnItsWay.names(comparison)
        .map(names -> Phrase.text("verdict.planned", water, names))
        .orElseGet(() -> Phrase.text("verdict.conditional", water));
  }
}
