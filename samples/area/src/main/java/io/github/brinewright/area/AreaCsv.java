package io.github.brinewright.area;

import io.github.brinewright.area.Totals.Count;
import io.github.brinewright.simulation.Spread;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Sums by district and scenario as CSV: a line for each measure. */
final class AreaCsv {
  /** Name of the line that sums up the districts. */
  static final String ALL = "all districts";

  private static final String HEAD =
      "district,scenario,measure,softeners,as_stated,mean_of_draws,low_5_percent,high_95_percent";

  private AreaCsv() {}

  /** A line for each district, scenario and measure, and the counts before them. */
  static String of(Town town) {
    List<String> lines = new ArrayList<>(List.of(HEAD));
    for (String district : town.names()) {
      add(lines, district, town.of(district));
    }
    add(lines, ALL, town.all());
    return String.join("\n", lines) + "\n";
  }

  private static void add(List<String> lines, String district, Totals totals) {
    String softeners = Long.toString(totals.of(Count.SOFTENERS));
    for (Count count : Count.values()) {
      String code = count.name().toLowerCase(Locale.ROOT);
      lines.add(line(district, "", code, softeners, Long.toString(totals.of(count)), "", "", ""));
    }
    for (Scenario scenario : Scenario.values()) {
      for (Measure measure : Measure.values()) {
        String stated = Long.toString(totals.sum(0, scenario, measure));
        List<String> cells =
            new ArrayList<>(List.of(district, scenario.code(), measure.code(), softeners, stated));
        cells.addAll(drawn(totals, scenario, measure));
        lines.add(line(cells.toArray(String[]::new)));
      }
    }
  }

  private static List<String> drawn(Totals totals, Scenario scenario, Measure measure) {
    if (totals.draws() == 0) {
      return List.of("", "", "");
    }
    Spread spread = new Drawn(totals).sum(scenario, measure);
    return List.of(whole(spread.mean()), whole(spread.low()), whole(spread.high()));
  }

  private static String whole(double value) {
    return Long.toString(Math.round(value));
  }

  private static String line(String... cells) {
    return Arrays.stream(cells).map(AreaCsv::quoted).collect(Collectors.joining(","));
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
