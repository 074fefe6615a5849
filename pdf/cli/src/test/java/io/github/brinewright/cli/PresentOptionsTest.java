package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.job.Column;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.job.SiteColumns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The softener in the house, described by options, is read as the cells of a row are. */
class PresentOptionsTest {
  private static final String HOME = "--hardness 24gpg --people 4 ";
  private static final String CLOCK = "--control clock --days 7 --rated-grains 40000 ";

  private final QuickVisit visit = new QuickVisit();
  private final ServicePriceOptions prices = new ServicePriceOptions();

  private Job job(String... args) {
    CommandSpec command = CommandSpec.create().name("look");
    visit.addTo(command);
    prices.addTo(command);
    new CommandLine(command).parseArgs(args);
    return visit.job(prices.files(), prices.names());
  }

  private static PresentSoftener present(Job job) {
    return job.homes().get(0).site().present().orElseThrow();
  }

  /** The names that people learn, each with a good value; readings and weekdays hold spaces. */
  private static Map<String, String> everyOption() {
    Map<String, String> all = new LinkedHashMap<>();
    all.put("--control", "weekdays");
    all.put("--regeneration-hour", "3");
    all.put("--days", "12");
    all.put("--weekdays", "mon thu");
    all.put("--volume-gal", "900");
    all.put("--set-hardness-gpg", "24");
    all.put("--set-capacity-grains", "30000");
    all.put("--reserve-gal", "100");
    all.put("--rated-grains", "40000");
    all.put("--resin-ft3", "1.25");
    all.put("--vessel-diameter-in", "10");
    all.put("--vessel-height-in", "54");
    all.put("--resin-id", "fine-mesh");
    all.put("--age-years", "9");
    all.put("--dosage", "8");
    all.put("--salt-lb", "9");
    all.put("--refill-min", "10");
    all.put("--refill-gpm", "0.5");
    all.put("--regenerant", "potassium_chloride");
    all.put("--salt-bought-lb-per-year", "640");
    all.put("--hardness-after-gpg", "1");
    all.put("--readings", "2026-01-03:12345 2026-04-02:18900");
    all.put("--read-meter", "house");
    return all;
  }

  private static List<String> without(String... names) {
    Map<String, String> options = everyOption();
    Arrays.asList(names).forEach(options::remove);
    List<String> all = new ArrayList<>(List.of("--hardness", "24gpg"));
    options.forEach((name, value) -> all.addAll(List.of(name, value)));
    return all;
  }

  @Test
  void eachColumnHasItsOption() {
    job((HOME + CLOCK).split(" "));
    PresentOptions options = new PresentOptions();
    options.addTo(CommandSpec.create());

    assertThat(options.names().values())
        .containsExactlyInAnyOrderElementsOf(everyOption().keySet());
    assertThat(options.names().keySet())
        .containsExactlyInAnyOrderElementsOf(
            SiteColumns.all().stream()
                .map(Column::name)
                .filter(name -> name.startsWith("present_"))
                .toList());
  }

  static Stream<Arguments> ways() {
    return Stream.of(
        Arguments.of(
            "weekdays, by dosage",
            without(
                "--days",
                "--volume-gal",
                "--set-hardness-gpg",
                "--set-capacity-grains",
                "--reserve-gal",
                "--salt-lb",
                "--refill-min",
                "--refill-gpm")),
        Arguments.of(
            "metered, by minutes",
            Stream.concat(
                    without(
                        "--control",
                        "--weekdays",
                        "--set-hardness-gpg",
                        "--set-capacity-grains",
                        "--salt-lb",
                        "--dosage")
                        .stream(),
                    Stream.of("--control", "metered"))
                .toList()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ways")
  void optionsGiveWhatARowGives(String name, List<String> options) {
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put("site_id", "home");
    cells.put("people", "3");
    cells.put("hardness_gpg", "24");
    for (int i = 2; i < options.size(); i += 2) {
      String column = options.get(i).substring(2).replace('-', '_');
      cells.put(
          "present_" + (column.equals("dosage") ? "dosage_lb_per_ft3" : column),
          options.get(i + 1));
    }
    Job row =
        JobFolder.read(JobFiles.of(Map.of(SiteCells.FILE, SiteCells.csv(cells))))
            .job()
            .orElseThrow();

    assertThat(present(job(options.toArray(String[]::new)))).isEqualTo(present(row));
  }

  @ParameterizedTest
  @CsvSource({
    "--control clock --days 100 --rated-grains 40000,'--days: \"100\" must be from 1 to 99'",
    "--control clock --days 0 --rated-grains 40000,'--days: \"0\" must be from 1 to 99'",
    "--control clock --days 7 --rated-grains 5,'--rated-grains: \"5\" must be from 3200 to 640000'",
    "--control clock --rated-grains 40000,'--days: is empty; a value from 1 to 99 is needed'",
    "--control weekdays --weekdays mom --resin-ft3 1,"
        + "'--weekdays: \"mom\" is not a weekday; did you mean \"mon\"?'",
    "--control clock --days 7 --weekdays mon --resin-ft3 1,"
        + "'--weekdays: \"mon\" does not go with clock in --control; leave it empty,"
        + " or change --control'",
    "--days 7 --rated-grains 40000,'--control: is empty; write what sets off a regeneration'",
    "--control metered --rated-grains 40000,'--volume-gal: is needed, or --set-hardness-gpg'",
    "--control clock --days 7,"
        + "'--rated-grains: is needed, or --resin-ft3, or --vessel-diameter-in with the height'",
    "--control clock --days 7 --resin-ft3 1 --salt-lb 9 --refill-min 10,"
        + "'--refill-min: \"10\" stands beside --salt-lb; state the salt'",
    "--control clock --days 7 --resin-ft3 1 --refill-gpm 0.5,'--refill-min: is empty; a value'",
    "--control clock --days 7 --resin-ft3 1 --readings 2026-01-03:1,"
        + "'--readings: \"2026-01-03:1\" is one reading alone'",
    "--control clock --days 7 --days 8 --resin-ft3 1,--days is given more than once",
    "--control clock --days 7 --resin-ft3 1 --meter-price 10000000,"
        + "'--meter-price: \"10000000\" must be from 0 to 1000000'",
    "--control clock --days 7 --resin-ft3 1 --visit-price 8.555,"
        + "'--visit-price: \"8.555\" has more decimals than USD has'"
  })
  void whatCannotBeIsRefusedByTheNameOfItsOption(String options, String words) {
    assertThatThrownBy(() -> job((HOME + options).split(" ")))
        .isInstanceOf(UsageException.class)
        .hasMessageContaining(words)
        .message()
        .doesNotContain("present_", "sites.csv");
  }

  @Test
  void nothingGivenAsksForAHomeAndItsSoftener() {
    assertThatThrownBy(this::job)
        .isInstanceOf(UsageException.class)
        .hasMessageContaining("--hardness")
        .hasMessageContaining("--control");
  }

  @Test
  void pricesOfServiceBelongToTheDealer() {
    Job job = job((HOME + CLOCK + "--meter-price 260 --visit-price 85.5").split(" "));

    assertThat(job.dealer().meterRetrofit()).contains(Money.parse("USD 260.00"));
    assertThat(job.dealer().serviceVisit()).contains(Money.parse("USD 85.50"));
  }

  /** There, control and rating speak of the unit that is looked at. */
  @Test
  void compareDescribesNoSoftenerInTheHouse() {
    CommandSpec compare = Main.commandLine().getSubcommands().get("compare").getCommandSpec();

    assertThat(compare.optionsMap().keySet())
        .contains("--control", "--rated-grains")
        .noneMatch(name -> name.startsWith("--present") || name.equals("--salt-lb"));
  }
}
