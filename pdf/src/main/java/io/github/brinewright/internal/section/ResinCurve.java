package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.internal.chart.CurveChart;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.softener.DosageCurveBasis;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The resin's capacity against salt dosage, with the settings in stock. In US units. */
final class ResinCurve {
  private static final int STEPS = 40;

  private final Kit kit;
  private final Tag tag;
  private final Candidate candidate;
  private final DosageCurveBasis basis;

  ResinCurve(Kit kit, Tag section, Candidate candidate, DosageCurveBasis basis) {
    this.kit = kit;
    tag = section;
    this.candidate = candidate;
    this.basis = basis;
  }

  Block block() {
    CurveChart artist =
        new CurveChart(
            curve(),
            candidate.softener().bases().stream().map(this::marked).toList(),
            dosage -> kit.words().number(dosage, 0),
            capacity -> kit.words().number(capacity, 0),
            kit.accent());
    return Block.stack(
            List.of(
                kit.subheading(tag, Tag.Role.H2, kit.text("settings.curve")),
                kit.quiet(tag, kit.text("settings.curveLead")),
                kit.drawing(tag, alternative(), artist).after(4)))
        .whole();
  }

  private List<Canvas.Point> curve() {
    SaltDosage low = basis.resinType().curve().lowest();
    SaltDosage span = basis.resinType().curve().highest().minus(low);
    return IntStream.rangeClosed(0, STEPS)
        .mapToObj(i -> low.plus(span.times((double) i / STEPS)))
        .map(dosage -> dosage.min(basis.resinType().curve().highest()))
        .map(this::point)
        .toList();
  }

  private Canvas.Point point(SaltDosage dosage) {
    return new Canvas.Point(dosage.poundsPerCubicFoot(), capacity(dosage).grainsPerCubicFoot());
  }

  private ResinCapacity capacity(SaltDosage dosage) {
    return basis.resinType().curve().at(dosage);
  }

  private CurveChart.Marked marked(CapacityBasis stocked) {
    SaltDosage dosage = ((DosageCurveBasis) stocked).dosage();
    return new CurveChart.Marked(point(dosage), dosage.equals(basis.dosage()));
  }

  private String alternative() {
    SaltDosage low = basis.resinType().curve().lowest();
    SaltDosage high = basis.resinType().curve().highest();
    return kit.text(
        "settings.curve.alt",
        Figure.of(capacity(low)),
        Figure.of(low),
        Figure.of(capacity(high)),
        Figure.of(high),
        Figure.of(capacity(basis.dosage())),
        Figure.of(basis.dosage()),
        Figure.of(stocked()));
  }

  private String stocked() {
    return candidate.softener().bases().stream()
        .map(each -> ((DosageCurveBasis) each).dosage())
        .map(
            dosage ->
                kit.words().figure(Figure.of(dosage))
                    + " ("
                    + kit.words().figure(Figure.of(capacity(dosage)))
                    + ")")
        .collect(Collectors.joining(", "));
  }
}
