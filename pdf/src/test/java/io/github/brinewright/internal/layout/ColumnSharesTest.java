package io.github.brinewright.internal.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.model.Table;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ColumnSharesTest {
  private static final TextStyle STYLE = TextStyle.BODY;
  private static final String AMOUNT = "12\u00A0525,00\u00A0$\u00A0US";

  /** The width of a page of letter paper without its margins, in points. */
  private static final double PAGE = 504;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void anAmountStaysOnOneLineHoweverManyColumnsThereAre(int columns) {
    List<Cell> heads = row("A long label that takes many lines", "Name of a unit", columns);
    List<Cell> amounts = row("Price with tax", AMOUNT, columns);
    List<Double> shares =
        new ColumnShares(
                Collections.nCopies(columns, Table.Kind.VALUES), List.of(heads, amounts), PAGE)
            .shares();

    assertThat(shares.stream().mapToDouble(Double::doubleValue).sum()).isBetween(0.9999, 1.0001);
    assertThat(shares.subList(1, shares.size()))
        .allSatisfy(
            share ->
                assertThat(Lines.of(AMOUNT, STYLE, share * PAGE - TableBlock.GUTTER)).hasSize(1));
  }

  private static List<Cell> row(String label, String value, int columns) {
    return Stream.concat(Stream.of(label), Collections.nCopies(columns, value).stream())
        .map(text -> Cell.of(text, STYLE))
        .toList();
  }
}
