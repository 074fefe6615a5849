package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemNeed;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can be wrong in items.csv, and what is made of a row that is right. */
class ItemProblemsTest {
  private static final String HEAD =
      "item_id,kind,price,percent,need,required_by,bundled_items,renewed_every_years,renewal_price";

  private static JobReading read(String rows) {
    return JobFolder.readWithoutHomes(JobFiles.of(Map.of("items.csv", HEAD + "\n" + rows + "\n")));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "a,accessory,,,,,,,              | PRICE_NEEDED    | price",
        "a,accessory,5,5,,,,,            | PRICE_NEEDED    | price",
        "a,accessory,,5,,,,,             | PERCENT_UNFIT   | percent",
        "a,accessory,5.001,,,,,,         | TOO_MANY_DECIMALS | price",
        "a,gadget,5,,,,,,                | NOT_A_CHOICE    | kind",
        "a,accessory,5,,required,,,,     | TEXT_NEEDED     | required_by",
        "a,accessory,5,,offered,ph-high,,, | NEED_UNFIT    | need",
        "a,accessory,5,,,ph-hihg,,,      | ID_UNKNOWN      | required_by",
        "a,bundle,5,,,,,,                | TEXT_NEEDED     | bundled_items",
        "a,bundle,5,,,,b,,               | ID_UNKNOWN      | bundled_items",
        "a,bundle,5,,,,a,,               | ID_UNKNOWN      | bundled_items",
        "a,accessory,5,,,,b,,            | KIND_UNFIT    | bundled_items",
        "a,accessory,5,,,,,,9            | NUMBER_NEEDED   | renewed_every_years",
        "a,discount,5,,,,,3,             | REFUSED         | ''"
      })
  void eachMistakeIsNamedWithItsColumn(String row, ProblemCode code, String column) {
    List<Problem> problems = read(row).problems();

    assertThat(problems).extracting(Problem::code).contains(code);
    assertThat(problems)
        .filteredOn(problem -> problem.code() == code)
        .allSatisfy(
            problem -> {
              assertThat(problem.file()).isEqualTo("items.csv");
              assertThat(problem.row()).isEqualTo(2);
              assertThat(problem.column()).isEqualTo(column);
            });
  }

  @Test
  void aMisspeltFindingIsToldTheNearestName() {
    Problem problem = read("a,accessory,5,,,ph-hihg,,,").problems().get(0);

    assertThat(new ProblemWords(Locale.US).say(problem)).contains("ph-hihg").contains("ph-high");
  }

  @Test
  void aRowMayLeaveOutMostOfIt() {
    List<Item> items =
        read("a,accessory,85,,,,,,\nb,permit,30,,included,,,,\nc,treatment,900,,,ph-too-low,,8,")
            .job()
            .orElseThrow()
            .prices()
            .items();

    assertThat(items)
        .extracting(Item::need)
        .containsExactly(ItemNeed.OFFERED, ItemNeed.INCLUDED, ItemNeed.REQUIRED);
    assertThat(items).extracting(Item::taxed).containsExactly(true, false, true);
    assertThat(items.get(0).name(Locale.US)).isEqualTo("a");
    assertThat(items.get(2).renewal()).isEqualTo(items.get(2).price());
  }
}
