package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.chart.Artist;
import io.github.brinewright.internal.chart.CurveChart;
import io.github.brinewright.internal.chart.DayMarks;
import io.github.brinewright.internal.chart.HardnessScale;
import io.github.brinewright.internal.chart.LevelBars;
import io.github.brinewright.internal.chart.RunningTotal;
import io.github.brinewright.internal.chart.StackedBars;
import io.github.brinewright.internal.chart.UnitBesideDoor;
import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Canvas.Stroke;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.SvgPad;
import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.Vessel;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Makes blocks and pictures of charts.
 *
 * @param words in the reader's language
 * @param accent colour of what stands out
 */
public record Charts(Wording words, Ink accent) {
  Block chart(Chart chart, Part within) {
    return new FigureBlock(within.figure(chart.alternative().in(words)), artist(chart));
  }

  /** A chart as a picture by itself, in Scalable Vector Graphics. */
  public String svg(Chart chart, double width) {
    Artist artist = artist(chart);
    SvgPad pad = new SvgPad();
    artist.draw(pad, new Box(0, 0, width, artist.height()));
    return pad.svg(width, artist.height(), chart.alternative().in(words));
  }

  private Artist artist(Chart chart) {
    if (chart instanceof Chart.HardnessScale scale) {
      return scale(scale);
    } else if (chart instanceof Chart.RunningTotal total) {
      return total(total);
    } else if (chart instanceof Chart.StackedBars bars) {
      return bars(bars);
    } else if (chart instanceof Chart.DayMarks marks) {
      return new DayMarks(marks.days().stream().map(this::days).toList(), marks.axis().in(words));
    } else if (chart instanceof Chart.Curve curve) {
      return curve(curve);
    } else if (chart instanceof Chart.UnitDrawing drawing) {
      return drawing(drawing);
    } else if (chart instanceof Chart.Levels levels) {
      return levels(levels);
    }
    throw new IllegalStateException("no way to draw " + chart);
  }

  private List<String> inWords(List<Phrase> phrases) {
    return phrases.stream().map(phrase -> phrase.in(words)).toList();
  }

  private Artist scale(Chart.HardnessScale scale) {
    return new HardnessScale(
        inWords(scale.classes()),
        scale.limits().stream().map(Hardness::grainsPerGallon).toList(),
        scale.limits().stream().map(limit -> words.number(Figure.of(limit))).toList(),
        scale.own(),
        scale.hardness().grainsPerGallon(),
        scale.highest().grainsPerGallon(),
        words.figure(Figure.of(scale.hardness())),
        accent);
  }

  /** The first series is the chosen one. */
  private Artist total(Chart.RunningTotal total) {
    CurrencyUnit currency = total.series().get(0).totals().get(0).getCurrencyUnit();
    List<RunningTotal.Series> series = new ArrayList<>();
    for (Chart.Series one : total.series()) {
      Stroke stroke = Stroke.values()[series.size() % Stroke.values().length];
      Ink ink = series.isEmpty() ? accent : Ink.TEXT;
      series.add(new RunningTotal.Series(one.name().in(words), amounts(one.totals()), stroke, ink));
    }
    return new RunningTotal(
        series,
        value -> words.about(Money.of(currency, BigDecimal.valueOf(Math.round(value)))),
        total.axis().in(words));
  }

  private static List<Double> amounts(List<Money> money) {
    return money.stream().map(each -> each.getAmount().doubleValue()).toList();
  }

  private Artist bars(Chart.StackedBars bars) {
    return new StackedBars(
        bars.bars().stream()
            .map(
                bar ->
                    new StackedBars.Bar(
                        bar.name().in(words),
                        amounts(bar.values()),
                        bar.total().in(words),
                        bar.chosen()))
            .toList(),
        inWords(bars.parts()),
        accent);
  }

  private DayMarks.Row days(Chart.Days days) {
    return new DayMarks.Row(
        days.name().in(words),
        days.events(),
        days.total().in(words),
        days.chosen() ? accent : Ink.TEXT,
        days.chosen());
  }

  private Artist curve(Chart.Curve curve) {
    return new CurveChart(
        curve.curve().stream().map(Charts::point).toList(),
        curve.stocked().stream()
            .map(stocked -> new CurveChart.Marked(point(stocked.at()), stocked.chosen()))
            .toList(),
        dosage -> words.number(dosage, 0),
        capacity -> words.number(capacity, 0),
        accent);
  }

  private Artist drawing(Chart.UnitDrawing drawing) {
    Vessel vessel = drawing.vessel();
    BrineTank tank = drawing.brineTank();
    return new UnitBesideDoor(
        drawing.vessels(),
        new UnitBesideDoor.Size(vessel.diameter().inches(), vessel.height().inches()),
        tank == null
            ? new UnitBesideDoor.Size(0, 0)
            : new UnitBesideDoor.Size(tank.diameter().inches(), tank.height().inches()),
        words.text("drawing.door"),
        drawing.height().in(words),
        drawing.width().in(words),
        accent);
  }

  private Artist levels(Chart.Levels levels) {
    return new LevelBars(
        levels.bars().stream()
            .map(
                bar ->
                    new LevelBars.Bar(
                        bar.name().in(words), bar.share(), bar.label().in(words), bar.chosen()))
            .toList(),
        accent);
  }

  private static Canvas.Point point(Chart.Point point) {
    return new Canvas.Point(
        point.dosage().poundsPerCubicFoot(), point.capacity().grainsPerCubicFoot());
  }
}
