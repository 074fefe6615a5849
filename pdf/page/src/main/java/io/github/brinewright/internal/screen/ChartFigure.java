package io.github.brinewright.internal.screen;

import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.proposal.ChartSvg;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A chart as a picture in two widths, of which the style sheet shows one, and its data as a table.
 *
 * @param words in the reader's language
 * @param charts draws it
 */
record ChartFigure(Wording words, ChartSvg charts) {
  private static final int WIDE = 540;
  private static final int NARROW = 330;
  private static final int MONTHS = 12;

  Html figure(Chart chart) {
    Html html = new Html().open("figure");
    html.open("div", "class", "wide").svg(charts.draw(chart, WIDE)).close("div");
    String name = chart.alternative().in(words);
    html.open("div", "class", "narrow", "role", "group", "tabindex", "0", "aria-label", name)
        .svg(charts.draw(chart, NARROW))
        .close("div");
    List<List<Phrase>> lines = lines(chart);
    if (!lines.isEmpty()) {
      html.open("details").element("summary", words.text("page.data"));
      html.add(new Tables(words).data(lines.get(0), lines.subList(1, lines.size())));
      html.close("details");
    }
    return html.close("figure");
  }

  /** Heads and lines of the data; none where the picture's own words say all. */
  private static List<List<Phrase>> lines(Chart chart) {
    if (chart instanceof Chart.DayMarks days) {
      return days(days);
    } else if (chart instanceof Chart.StackedBars bars) {
      return bars(bars);
    } else if (chart instanceof Chart.RunningTotal totals) {
      return totals(totals);
    } else if (chart instanceof Chart.Levels levels) {
      return lines(
          List.of(Phrase.text("page.row"), Phrase.text("page.value")),
          levels.bars().stream().map(bar -> List.of(bar.name(), bar.label())));
    }
    return List.of();
  }

  private static List<List<Phrase>> lines(List<Phrase> heads, Stream<List<Phrase>> lines) {
    return Stream.concat(Stream.of(heads), lines).toList();
  }

  /** How often in each month; the days of a year in twelve parts, as the picture has them. */
  private static List<List<Phrase>> days(Chart.DayMarks marks) {
    List<Phrase> heads = new ArrayList<>(List.of(marks.axis()));
    for (int month = 1; month <= MONTHS; month++) {
      heads.add(number(month));
    }
    heads.add(Phrase.text("page.value"));
    return lines(heads, marks.days().stream().map(ChartFigure::days));
  }

  private static List<Phrase> days(Chart.Days days) {
    int[] sums = new int[MONTHS];
    int all = days.events().size();
    for (int day = 0; day < all; day++) {
      sums[day * MONTHS / all] += days.events().get(day);
    }
    List<Phrase> line = new ArrayList<>(List.of(days.name()));
    for (int sum : sums) {
      line.add(number(sum));
    }
    line.add(days.total());
    return line;
  }

  private static List<List<Phrase>> bars(Chart.StackedBars bars) {
    List<Phrase> heads = new ArrayList<>(List.of(Phrase.text("page.row")));
    heads.addAll(bars.parts());
    heads.add(Phrase.text("page.value"));
    return lines(
        heads,
        bars.bars().stream()
            .map(
                bar ->
                    Stream.of(
                            Stream.of(bar.name()),
                            bar.values().stream().map(value -> Phrase.of(Figure.about(value))),
                            Stream.of(bar.total()))
                        .flatMap(each -> each)
                        .toList()));
  }

  private static List<List<Phrase>> totals(Chart.RunningTotal totals) {
    List<Phrase> heads = new ArrayList<>(List.of(totals.axis()));
    totals.series().forEach(series -> heads.add(series.name()));
    List<List<Phrase>> lines = new ArrayList<>(List.of(heads));
    for (int year = 0; year < totals.series().get(0).totals().size(); year++) {
      List<Phrase> line = new ArrayList<>(List.of(number(year)));
      for (Chart.Series series : totals.series()) {
        line.add(Phrase.of(Figure.about(series.totals().get(year))));
      }
      lines.add(line);
    }
    return lines;
  }

  private static Phrase number(int number) {
    return Phrase.of(Figure.of(number));
  }
}
