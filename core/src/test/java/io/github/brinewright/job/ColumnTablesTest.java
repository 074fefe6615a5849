package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.GeneratedPage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables of columns in the page that a newcomer reads. */
class ColumnTablesTest {
  private static final String PAGE = "../README.md";
  private static final String END = "<!-- end -->";

  private final DecimalFormat limits =
      new DecimalFormat("#,##0.####", DecimalFormatSymbols.getInstance(Locale.US));

  @Test
  void theTablesOfThePageAreThoseOfTheCode() throws IOException {
    String page = Files.readString(Path.of(PAGE));
    for (List<Column> columns :
        List.of(
            SiteColumns.all(),
            UnitColumns.all(),
            ItemColumns.all(),
            PaymentColumns.all(),
            ResinColumns.all(),
            TariffColumns.all(),
            DealerColumns.all())) {
      page = replaced(page, columns);
    }
    GeneratedPage.keep(PAGE, page);
  }

  private String replaced(String page, List<Column> columns) {
    String start = "<!-- columns " + columns.get(0).file() + " -->\n";
    assertThat(page).contains(start);
    int from = page.indexOf(start) + start.length();
    int to = page.indexOf(END, from);
    return page.substring(0, from) + table(columns) + page.substring(to);
  }

  private String table(List<Column> columns) {
    return columns.stream()
        .map(this::row)
        .collect(
            Collectors.joining(
                "\n", "\n| column | meaning | values | when empty |\n|---|---|---|---|\n", "\n\n"));
  }

  private String row(Column column) {
    return "| `"
        + column.name()
        + (column.needed() ? "` * | " : "` | ")
        + column.meaning(Locale.US)
        + " | "
        + values(column)
        + " | "
        + (column.usual().isEmpty() ? "" : "`" + column.usual() + "`")
        + " |";
  }

  private String values(Column column) {
    if (!column.constants().isEmpty()) {
      return column.choices().stream()
          .map(each -> "`" + each + "`")
          .collect(Collectors.joining(", "));
    }
    return switch (column.kind()) {
      case SHORT_NAME -> "1-40 characters";
      case DATE -> "as `2026-03-31`";
      case READINGS -> "as `2026-01-03:12345 2026-04-02:18900`";
      case LAB_RESULT -> column.range().map(this::range).orElseThrow() + " mg/L, `<0.05`, `ND`";
      case PLACE -> "as `US`, `US-CA`, `CA`, `CA-ON`";
      case LOCALE -> "as `en-US`, `es-US`, `fr-CA`";
      case CURRENCY -> "three letters";
      case COLOUR -> "as `#1F5C66`";
      case TEXT, REFERENCE, PICTURE -> "";
      default -> column.range().map(this::range).orElseThrow() + unit(column);
    };
  }

  private String range(Column.Ends range) {
    String join = range.low() < 0 ? " to " : "-";
    return limits.format(range.low()) + join + limits.format(range.high());
  }

  private static String unit(Column column) {
    return column.unit().isEmpty() ? "" : " " + column.unit();
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "es-US", "fr-CA"})
  void everyColumnHasItsMeaningInEveryLanguage(String tag) {
    Locale locale = Locale.forLanguageTag(tag);

    assertThat(AllColumns.list())
        .allSatisfy(
            column -> {
              assertThat(column.meaning(locale)).isNotBlank().doesNotEndWith(".");
              if (!locale.equals(Locale.US)) {
                assertThat(column.meaning(locale)).isNotEqualTo(column.meaning(Locale.US));
              }
            });
  }

  @Test
  void aNameStandsOnceInAFileAndItsUnitIsKnown() {
    assertThat(AllColumns.list())
        .extracting(column -> column.file() + " " + column.name())
        .doesNotHaveDuplicates();
    assertThat(AllColumns.list())
        .filteredOn(column -> column.name().endsWith("_gpm"))
        .allMatch(column -> column.unit().equals("gpm"));
  }
}
