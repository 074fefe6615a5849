package io.github.brinewright.internal.section;

import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Together;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.DosageCurveBasis;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The resin's capacity against salt dosage, with the settings in stock. In US units.
 *
 * @param softener whose settings are shown
 * @param basis the setting chosen
 */
record ResinCurve(Softener softener, DosageCurveBasis basis) {
  private static final String KEY = "settings.curve";
  private static final int STEPS = 40;

  Section section() {
    Chart chart =
        new Chart.Curve(
            alternative(), curve(), stockedDosages().stream().map(this::stocked).toList());
    return Section.of(
        KEY,
        Phrase.text(KEY),
        Together.of(Paragraph.quiet(Phrase.text("settings.curveLead")), chart));
  }

  private SaltDosage lowest() {
    return basis.resinType().curve().lowest();
  }

  private SaltDosage highest() {
    return basis.resinType().curve().highest();
  }

  private List<Chart.Point> curve() {
    SaltDosage span = highest().minus(lowest());
    return IntStream.rangeClosed(0, STEPS)
        .mapToObj(i -> lowest().plus(span.times((double) i / STEPS)).min(highest()))
        .map(this::point)
        .toList();
  }

  private Chart.Point point(SaltDosage dosage) {
    return new Chart.Point(dosage, capacity(dosage));
  }

  private ResinCapacity capacity(SaltDosage dosage) {
    return basis.resinType().curve().at(dosage);
  }

  private List<SaltDosage> stockedDosages() {
    return softener.bases().stream().map(each -> ((DosageCurveBasis) each).dosage()).toList();
  }

  private Chart.Stocked stocked(SaltDosage dosage) {
    return new Chart.Stocked(point(dosage), dosage.equals(basis.dosage()));
  }

  private Phrase alternative() {
    List<Phrase> stocked = stockedDosages().stream().map(this::inWords).toList();
    return Phrase.text(
        "settings.curve.alt",
        Phrase.of(Figure.of(capacity(lowest()))),
        Phrase.of(Figure.of(lowest())),
        Phrase.of(Figure.of(capacity(highest()))),
        Phrase.of(Figure.of(highest())),
        Phrase.of(Figure.of(capacity(basis.dosage()))),
        Phrase.of(Figure.of(basis.dosage())),
        new Phrase.Joined(stocked, ", "));
  }

  private Phrase inWords(SaltDosage dosage) {
    return new Phrase.Joined(
        List.of(
            Phrase.of(Figure.of(dosage)),
            Phrase.plain(" ("),
            Phrase.of(Figure.of(capacity(dosage))),
            Phrase.plain(")")),
        "");
  }
}
