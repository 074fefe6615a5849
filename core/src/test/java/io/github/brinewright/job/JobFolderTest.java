package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.cost.ServicePrices;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobFolderTest {
  private static final String HEADER = "site_id,customer,hardness_gpg,people\n";
  private static final String GOOD_ROW = "A1,Ann,18,3\n";

  @TempDir private Path folder;

  private JobReading read() {
    return JobFolder.read(folder);
  }

  private void write(String file, String text) throws IOException {
    write(file, text, StandardCharsets.UTF_8);
  }

  private void write(String file, String text, Charset charset) throws IOException {
    Files.write(folder.resolve(file), text.getBytes(charset));
  }

  private List<String> problems() {
    return read().problems().stream().map(Problem::toString).toList();
  }

  @Test
  void oneRowIsEnough() throws IOException {
    write("sites.csv", HEADER + GOOD_ROW);

    JobReading reading = read();

    assertThat(reading.problems()).isEmpty();
    Job job = reading.job().orElseThrow();
    assertThat(job.compare(job.homes().get(0)).recommended()).isPresent();
    assertThat(reading.notes()).containsExactly(Note.BUILT_IN_UNITS, Note.PLACEHOLDER_PRICES);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lent,credit,25,8.9,36,0  | false",
        "lent,credit,25,9.9,36,0  | true",
        "lent,credit,25,8.9,36,10 | true",
        "lent,credit,10,8.9,36,0  | true",
        "cash,cash,25,,,          | true"
      })
  void ofTwoCreditsThatDifferTheWaysToPayAreOfferedAndItIsSaid(String way, boolean said)
      throws IOException {
    write("sites.csv", HEADER + GOOD_ROW);
    write("dealer.properties", "deposit_percent=25\ncredit_percent=8.9\ncredit_months=36\n");
    write("payments.csv", "way_id,kind,deposit_percent,percent_per_year,months,fee\n" + way + "\n");

    JobReading reading = read();

    assertThat(reading.problems()).isEmpty();
    assertThat(reading.notes().contains(Note.CREDIT_OF_PAYMENTS)).isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A1,Ann,0,3 | column hardness_gpg: \"0\" must be from 0.1 to 200",
        "A1,Ann,-4,3 | column hardness_gpg: \"-4\" must be from 0.1 to 200",
        "A1,Ann,18,0 | column people: \"0\" must be from 1 to 40",
        "A1,Ann,18,2.5 | column people: \"2.5\" must be a whole number",
        "A1,Ann,\"18,5\",3 | column hardness_gpg: \"18,5\" has a comma",
        "A1,Ann,18 gpg,3 | column hardness_gpg: \"18 gpg\" is not a number",
        "A1,Ann,NaN,3 | column hardness_gpg: \"NaN\" is not a number",
        "A1,Ann,,3 | fill exactly one",
        "A1,=2+5,18,3 | column customer: \"=2+5\" looks like a spreadsheet formula",
        "A1,@SUM(A1),18,3 | looks like a spreadsheet formula",
        "../up,Ann,18,3 | column site_id: \"../up\" must be 1 to 40 letters",
        "A1,Ann,18,3,7 | has 5 fields, but the header has 4",
      })
  void aBadCellIsNamedWithRowColumnValueAndLimit(String row, String message) throws IOException {
    write("sites.csv", HEADER + GOOD_ROW.replace("A1", "B2") + row + "\n");

    JobReading reading = read();

    assertThat(reading.problems())
        .anySatisfy(
            problem ->
                assertThat(problem.toString())
                    .startsWith("sites.csv, row 3")
                    .contains(message.strip()));
    assertThat(reading.job().orElseThrow().homes()).hasSize(1);
    assertThat(reading.homesRefused()).isEqualTo(1);
  }

  @Test
  void allProblemsOfARowAndOfAllFilesComeAtOnce() throws IOException {
    write("sites.csv", HEADER + "A1,Ann,x,0\nA1,Ann,18,3\nA1,Ann,18,3\n");
    write("units.csv", "unit_id,resin_ft3,dosages_lb_per_ft3,resin_id,price\nU1,1,6,gell,10\n");

    assertThat(problems())
        .anyMatch(p -> p.startsWith("sites.csv, row 2, column hardness_gpg"))
        .anyMatch(p -> p.startsWith("sites.csv, row 2, column people"))
        .anyMatch(p -> p.startsWith("sites.csv, row 4, column site_id"))
        .anyMatch(p -> p.startsWith("units.csv, row 2, column resin_id: \"gell\""));
    assertThat(read().job()).as("units are shared by all homes").isEmpty();
  }

  @Test
  void anUnknownColumnNamesTheNearestKnownOne() throws IOException {
    write("sites.csv", "site_id,hardnes_gpg,people\nA1,18,3\n");

    assertThat(problems())
        .singleElement()
        .asString()
        .contains("\"hardnes_gpg\" is not a known column; did you mean \"hardness_gpg\"?");
  }

  @Test
  void aHomeIsWrittenToInItsOwnLanguage() throws IOException {
    write("dealer.properties", "terms=All sales final.\nterms_es=Venta firme.\n");
    write(
        "sites.csv",
        "site_id,hardness_gpg,people,language\nA1,18,3,es-US\nB2,18,3,\nC3,18,3,fr-CA\nD4,18,3,xx\n");

    JobReading reading = read();
    Job job = reading.job().orElseThrow();
    Dealer spanish = job.dealerFor(job.home("A1").orElseThrow());
    Dealer usual = job.dealerFor(job.home("B2").orElseThrow());
    Dealer french = job.dealerFor(job.home("C3").orElseThrow());

    assertThat(spanish.locale()).isEqualTo(Locale.forLanguageTag("es-US"));
    assertThat(spanish.terms()).isEqualTo("Venta firme.");
    assertThat(usual).isEqualTo(job.dealer());
    assertThat(usual.terms()).isEqualTo("All sales final.");
    assertThat(french.terms()).as("none of its own").isEqualTo("All sales final.");
    assertThat(reading.problems())
        .singleElement()
        .asString()
        .contains("row 5, column language: \"xx\" is not a locale we write in");
  }

  @Test
  void semicolonsAreExplained() throws IOException {
    write("sites.csv", "site_id;hardness_gpg;people\nA1;18;3\n");

    assertThat(problems()).singleElement().asString().contains("separated by semicolons");
  }

  @Test
  void aByteOrderMarkOfUtf8IsNoObstacle() throws IOException {
    write("sites.csv", "\uFEFF" + HEADER + GOOD_ROW);

    assertThat(problems()).isEmpty();
  }

  @Test
  void otherEncodingsAreExplained() throws IOException {
    write("sites.csv", HEADER + "A1,Zoé,18,3\n", StandardCharsets.ISO_8859_1);
    assertThat(problems())
        .singleElement()
        .asString()
        .startsWith("sites.csv, row 2")
        .contains("not UTF-8");

    write("sites.csv", HEADER + GOOD_ROW, StandardCharsets.UTF_16);
    assertThat(problems()).singleElement().asString().contains("UTF-16");
  }

  @Test
  void aMegabyteInOneFieldIsRefusedWithoutPrintingIt() throws IOException {
    write("sites.csv", HEADER + "A1," + "x".repeat(1_000_000) + ",18,3\n" + "B2,Ben,18,3\n");

    JobReading reading = read();

    assertThat(reading.problems())
        .singleElement()
        .satisfies(
            problem ->
                assertThat(problem.toString())
                    .contains("(1000000 characters)", "longer than 2000")
                    .hasSizeLessThan(300));
    assertThat(reading.job().orElseThrow().homes()).hasSize(1);
  }

  @Test
  void anOpenQuoteIsExplained() throws IOException {
    write("sites.csv", HEADER + "A1,\"Ann,18,3\n");

    assertThat(problems()).singleElement().asString().contains("quote");
  }

  @Test
  void aDosageOutsideTheTableIsExplained() throws IOException {
    write("sites.csv", HEADER + GOOD_ROW);
    write("units.csv", "unit_id,resin_ft3,dosages_lb_per_ft3,resin_id,price\nU1,1,3,fine-mesh,1\n");

    assertThat(problems())
        .singleElement()
        .asString()
        .startsWith("units.csv, row 2")
        .contains("\"3\" lb/ft3 is outside the table of the resin, which runs from 5 to 15");
  }

  @Test
  void emptyFilesAreExplained() throws IOException {
    write("sites.csv", "");
    assertThat(problems()).singleElement().asString().contains("is empty");

    write("sites.csv", HEADER);
    assertThat(problems()).singleElement().asString().contains("has no home");
  }

  @Test
  void aTariffFileWithoutATariffIsNotFilledWithPlaceholders() throws IOException {
    write("sites.csv", HEADER + GOOD_ROW);
    write("tariffs.csv", "tariff_id,water_price_per_1000_gal\n");

    assertThat(problems()).singleElement().asString().contains("tariffs.csv: has no tariff");
    assertThat(read().job()).isEmpty();
  }

  @Test
  void aMissingFolderFileIsExplained() {
    assertThat(problems()).singleElement().asString().startsWith("sites.csv: is not in ");
  }

  @Test
  void dealerValuesAreCheckedToo() throws IOException {
    write("sites.csv", HEADER + GOOD_ROW);
    write("dealer.properties", "acent=#123456\ncurrency=DOLLARS\ntax_percent=6,25\nlocale=xx-YY\n");

    assertThat(problems())
        .hasSize(4)
        .anyMatch(p -> p.contains("did you mean \"accent\"?"))
        .anyMatch(p -> p.contains("\"DOLLARS\" is not a currency"))
        .anyMatch(p -> p.contains("\"6,25\" has a comma"))
        .anyMatch(p -> p.contains("locale"));
  }

  @Test
  void pricesOfServiceAreInTheDealersCurrency() throws IOException {
    write("sites.csv", HEADER + GOOD_ROW);
    write(
        "dealer.properties", "currency=CAD\nmeter_retrofit_price=260\nservice_visit_price=85.50\n");

    Dealer dealer = read().job().orElseThrow().dealer();

    assertThat(dealer.meterRetrofit()).contains(Money.parse("CAD 260.00"));
    assertThat(dealer.serviceVisit()).contains(Money.parse("CAD 85.50"));
    write("dealer.properties", "service_visit_price=0\n");
    assertThat(read().job().orElseThrow().dealer().servicePrices())
        .isEqualTo(new ServicePrices(Optional.empty(), Optional.of(Money.zero(CurrencyUnit.USD))));
  }

  @Test
  void wrongPricesOfServiceAreNamedInEachLanguage() throws IOException {
    write("sites.csv", HEADER + GOOD_ROW);
    write("dealer.properties", "meter_retrofit_price=260,50\nservice_visit_price=85.505\n");

    assertThat(problems())
        .containsExactly(
            "dealer.properties, column meter_retrofit_price: \"260,50\" has a comma;"
                + " write decimals with a point and thousands without a mark",
            "dealer.properties, column service_visit_price: \"85.505\" has more decimals than"
                + " USD has");
    assertThat(read().problems().stream().map(new ProblemWords(Locale.CANADA_FRENCH)::say))
        .allMatch(text -> text.startsWith("dealer.properties, colonne "))
        .anyMatch(text -> text.endsWith("a plus de décimales que USD"));
    assertThat(read().problems().stream().map(new ProblemWords(Locale.forLanguageTag("es"))::say))
        .anyMatch(text -> text.endsWith("tiene más decimales que USD"));
    assertThat(read().job()).isEmpty();
  }

  @Test
  void choicesAreReadOnATurkishMachine() throws IOException {
    Locale machine = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      write("sites.csv", "site_id,hardness_gpg,people,water_source\nA1,18,3,PUBLIC_SUPPLY\n");
      assertThat(problems()).isEmpty();
    } finally {
      Locale.setDefault(machine);
    }
  }
}
