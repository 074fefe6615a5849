package io.github.brinewright.internal.section;

import io.github.brinewright.cost.CostKind;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.joda.money.Money;

/**
 * The softener that is in the house as the first column of tables: what it is, and what it does in
 * a mean year of the simulated ones, run as it was found.
 *
 * @param study of it
 */
record PresentColumn(ServiceStudy study) {
  /** Key of the column, of its bar and of its line. */
  static final String KEY = "now";

  /** What nobody knows of it, or what it does not have. */
  static final Phrase NONE = Phrase.plain("–");

  static Phrase name() {
    return Phrase.text("now.column");
  }

  /** The same within a sentence that says what a chart shows. */
  static Phrase said() {
    return Phrase.text("now.said.AS_FOUND");
  }

  Table.Column head() {
    return new Table.Column(KEY, name(), Table.Kind.VALUES);
  }

  FoundSoftener found() {
    return study.found();
  }

  ServiceOption asFound() {
    return study.asFound();
  }

  Phrase found(Function<FoundSoftener, Figure> figure) {
    return Phrase.of(figure.apply(found()));
  }

  Phrase year(Function<ServiceOption, Figure> figure) {
    return Phrase.of(figure.apply(asFound()));
  }

  Money saltAndWater() {
    Map<CostKind, Money> lines = asFound().costLines();
    return Money.total(
        lines.get(CostKind.SALT), lines.get(CostKind.WATER), lines.get(CostKind.SEWER));
  }

  /** Price and running over the years compared; nothing is bought. */
  Phrase life() {
    return Phrase.of(Figure.about(lifeCost()));
  }

  Money lifeCost() {
    return study.runningAsFound().after(study.comparison().priceList().terms().years());
  }

  private HomeLoad home() {
    return study.comparison().home();
  }

  /** Gallons from all causes, and the days of mean use that they are. */
  Phrase hard() {
    return HardWaterText.of(asFound().hardWater(), home());
  }

  /** What is taken as so of it, because nobody found it. */
  Paragraph assumed() {
    List<Phrase> sentences = new ArrayList<>(List.of(Phrase.text("now.taken")));
    study.assumptions().stream().map(Phrase.Assumed::new).forEach(sentences::add);
    return Paragraph.fine(Phrase.sentences(sentences));
  }

  Phrase service() {
    return CandidateRow.service(found().softener());
  }
}
