package io.github.brinewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvRowsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+1",
        "-1",
        "@x",
        " =1",
        "\t=1",
        "\r=1",
        "\n=1\nx",
        "\u2028=1",
        "\u200B=1",
        "\u00A0=1",
        "\uFEFF=1",
        "\uFF1D1",
        "\u0000-1"
      })
  void whatASpreadsheetWouldRunIsText(String formula) {
    assertThat(CsvRows.cell(formula)).isEqualTo("'" + formula);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a=1", "1-2", "Ann", "", " Ann", "5 @ 3"})
  void otherTextStaysAsItIs(String text) {
    assertThat(CsvRows.cell(text)).isEqualTo(text);
  }
}
