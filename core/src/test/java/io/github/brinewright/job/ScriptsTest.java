package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names in any script: printed, printed otherwise, or refused with a word; all are invented. */
class ScriptsTest {
  private static JobReading read(String columns, String cells) {
    return JobFolder.read(
        JobFiles.of(
            Map.of(
                "sites.csv",
                "site_id,hardness_gpg,people," + columns + "\nA1,18,3," + cells + "\n")));
  }

  /** Vietnamese also with its accents written apart. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Γιώργος Αλμυρός",
        "Ὀδυσσεύς",
        "Щукина Њежић",
        "Nguyễn Thị Hương Đào",
        "Nguye\u0302\u0303n",
        "Żółć Gęślą",
        "Iğdır Şükrü İı",
        "Þórður Æsir",
        "Štěpán Ľuboš Ősi"
      })
  void latinGreekAndCyrillicArePrinted(String name) {
    JobReading reading =
        read("customer,street,town,notes", String.join(",", name, name, name, name));

    assertThat(reading.problems()).isEmpty();
    assertThat(reading.job().orElseThrow().homes().get(0).site().contact().printedName())
        .isEqualTo(name);
  }

  @ParameterizedTest
  @CsvSource({
    "王小明, 王 (U+738B)",
    "أحمد, أ (U+0623)",
    "प्रिया, प (U+092A)",
    "Ann 👩‍🔧, 👩 (U+1F469)",
    "たろう, た (U+305F)",
    "김철수, 김 (U+AE40)"
  })
  void anotherScriptAsksForANameThatCanBePrinted(String name, String told) {
    JobReading refused = read("customer", name);
    JobReading taken = read("customer,customer_latin", name + ",Printed Name");

    assertThat(refused.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.code()).isEqualTo(ProblemCode.LATIN_NEEDED);
              assertThat(problem.toString())
                  .startsWith("sites.csv, row 2, column customer: ")
                  .contains(told, "customer_latin");
            });
    assertThat(taken.problems()).isEmpty();
    assertThat(taken.job().orElseThrow().homes().get(0).site().contact())
        .satisfies(contact -> assertThat(contact.name()).isEqualTo(name))
        .satisfies(contact -> assertThat(contact.printedName()).isEqualTo("Printed Name"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "street",
        "town",
        "phone",
        "email",
        "rep",
        "notes",
        "quote_number",
        "customer_latin"
      })
  void whereThereIsNoOtherNameItIsRefused(String column) {
    List<Problem> problems = read(column, "号 5").problems();

    assertThat(problems)
        .singleElement()
        .satisfies(
            problem ->
                assertThat(problem.toString())
                    .startsWith("sites.csv, row 2, column " + column + ": ")
                    .contains("号 (U+53F7)", "Latin, Greek or Cyrillic"));
  }

  @Test
  void textsOfTheDealerAndTheItemsAreHeldToTheSame() {
    JobFiles files =
        JobFiles.of(
            Map.of(
                "sites.csv",
                "site_id,hardness_gpg,people\nA1,18,3\n",
                "dealer.properties",
                "name=水\nwarranty_es=½ año 🙂\n",
                "items.csv",
                "item_id,kind,name,price\nI1,accessory,ज,5\n家,accessory,,5\n"));

    assertThat(JobFolder.read(files).problems())
        .extracting(Problem::column, Problem::code)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("name", ProblemCode.NOT_PRINTABLE),
            org.assertj.core.groups.Tuple.tuple("warranty_es", ProblemCode.NOT_PRINTABLE),
            org.assertj.core.groups.Tuple.tuple("name", ProblemCode.NOT_PRINTABLE),
            org.assertj.core.groups.Tuple.tuple("item_id", ProblemCode.NOT_PRINTABLE));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u202E", "\u2067", "\u200B", "\u00AD", "\u001B", "\u2028", "\uE000"})
  void whatCannotBeSeenIsRefusedByItsNumber(String bad) {
    for (String column : List.of("customer", "notes")) {
      Problem problem = read(column, "An" + bad + "n").problems().get(0);

      assertThat(problem.code()).isEqualTo(ProblemCode.CONTROL_CHARACTER);
      for (String language : List.of("en", "es", "fr")) {
        assertThat(new ProblemWords(Locale.forLanguageTag(language)).say(problem))
            .contains(String.format("U+%04X", (int) bad.charAt(0)))
            .doesNotContain(bad);
      }
    }
  }
}
