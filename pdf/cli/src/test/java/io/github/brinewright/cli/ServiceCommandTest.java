package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import io.github.brinewright.exchange.ServiceJson;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.service.Fault;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The softener that is already in a house, studied from the command line. */
class ServiceCommandTest extends CommandTest {
  private static final Path TOWN = Path.of("..", "..", "samples", "job");
  private static final Job JOB = JobFolder.read(TOWN).job().orElseThrow();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 2);
  private static final int WIDEST = 100;
  private static final String EXAMPLE =
      "--hardness 24gpg --people 4 --rated-grains 40000 --control clock --days 7"
          + " --refill-min 10 --refill-gpm 0.5";
  private static final String PRESENT =
      "site_id,hardness_gpg,people,present_control,present_days,present_rated_grains\n";

  static List<String> homes() {
    return JOB.homes().stream()
        .map(QuotedHome::site)
        .filter(site -> site.present().isPresent())
        .map(site -> site.id())
        .toList();
  }

  private static Wording words() {
    return Wording.of(Locale.US, UnitSystem.US);
  }

  private static QuotedHome home(String id) {
    return JOB.home(id).orElseThrow();
  }

  private int service(String... args) {
    return run(Stream.concat(Stream.of("service"), Arrays.stream(args)).toArray(String[]::new));
  }

  private int described(String options) {
    return service(options.split(" "));
  }

  private String printed() {
    String text = out.toString();
    out.getBuffer().setLength(0);
    return text;
  }

  @Test
  void theTownHasPresentSofteners() {
    assertThat(homes()).hasSizeGreaterThanOrEqualTo(6);
  }

  @ParameterizedTest
  @MethodSource("homes")
  void jsonAndReportAreThoseOfTheLibrary(String id) throws IOException {
    Path report = folder.resolve(id + ".pdf");
    assertThat(
            service(
                TOWN.toString(),
                "--site",
                id,
                "--format",
                "json",
                "--out",
                report.toString(),
                "--date",
                DAY.toString()))
        .as(err.toString())
        .isZero();

    assertThat(printed().strip()).isEqualTo(ServiceJson.one(JOB.service(home(id)), words()));
    assertThat(Files.readAllBytes(report))
        .isEqualTo(Proposals.of(JOB).serviceReport(home(id), DAY).pdf());
    assertThat(err.toString()).contains("Service report written to " + report);
  }

  /** The columns of a line of the table, after its label; two blanks part them. */
  private static List<String> cells(String table, String label) {
    String line =
        table
            .lines()
            .filter(each -> each.startsWith(label + " "))
            .reduce((first, second) -> second)
            .orElseThrow(() -> new AssertionError(label + " is not in\n" + table));
    return List.of(line.substring(label.length()).strip().split(" {2,}"));
  }

  @ParameterizedTest
  @MethodSource("homes")
  void theTableSaysWhatTheStudyFound(String id) {
    assertThat(service(TOWN.toString(), "--site", id)).as(err.toString()).isZero();
    String table = printed();
    ServiceStudy study = JOB.service(home(id));
    List<ServiceOption> ways = study.distinctOptions();

    assertThat(cells(table, "salt"))
        .containsExactlyElementsOf(all(ways, way -> Figure.roughly(way.salt())));
    assertThat(cells(table, "water to drain"))
        .containsExactlyElementsOf(all(ways, way -> Figure.roughly(way.water())));
    assertThat(cells(table, "hard water"))
        .containsExactlyElementsOf(all(ways, way -> Figure.roughly(way.hardWater().total())));
    assertThat(cells(table, "out of soft water"))
        .containsExactlyElementsOf(
            all(ways, way -> Figure.roughDays(way.hardWater().runOutDays())));
    assertThat(cells(table, "mean interval"))
        .containsExactlyElementsOf(
            all(ways, way -> Figure.roughDays(way.daysBetweenRegenerations())));
    assertThat(cells(table, "cost to run"))
        .containsExactlyElementsOf(all(ways, way -> Figure.about(way.cost())));
    assertThat(table).contains("advice: " + words().advice(study.advice()));
  }

  /** A column of the table from top to bottom, its lines joined. */
  private static String column(String table, int place) {
    int left = 22 + 20 * place;
    return table
        .lines()
        .filter(line -> line.length() > left)
        .map(line -> line.substring(left, Math.min(line.length(), left + 18)).strip())
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @MethodSource("homes")
  void pricesAndPaybacksStandInTheColumnOfTheirWay(String id) {
    service(TOWN.toString(), "--site", id);
    String table = printed();
    List<ServiceOption> ways = JOB.service(home(id)).distinctOptions();
    for (int i = 0; i < ways.size(); i++) {
      String column = column(table, i);
      ServiceOption way = ways.get(i);
      way.price()
          .ifPresent(price -> assertThat(column).contains(words().money(price.toBigMoney())));
      Stream.of(way.payback(), way.paybackAgainstFound())
          .flatMap(Optional::stream)
          .forEach(payback -> assertThat(column).contains(words().payback(payback)));
    }
  }

  private static List<String> all(
      List<ServiceOption> ways, Function<ServiceOption, Figure> figure) {
    return ways.stream().map(figure).map(words()::figure).toList();
  }

  @ParameterizedTest
  @MethodSource("homes")
  void theTableNamesEveryFaultAndAssumptionWithinAHundredColumns(String id) {
    service(TOWN.toString(), "--site", id);
    String table = printed();
    ServiceStudy study = JOB.service(home(id));

    assertThat(table.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(WIDEST));
    String text = table.lines().map(String::strip).collect(Collectors.joining(" "));
    for (Fault fault : study.faults()) {
      assertThat(text).contains("- " + words().fault(fault));
    }
    study.assumptions().forEach(each -> assertThat(text).contains(words().assumption(each)));
  }

  /**
   * S06 stays on potassium; that a unit on sodium has been recommended for a sale does not count.
   */
  @Test
  void cautionsAreOnTheHomeAndOnWhatWouldTakeItsPlace() throws IOException {
    service(TOWN.toString(), "--site", "S06");
    assertThat(printed()).contains("on potassium").doesNotContain("this one runs on sodium");

    Files.writeString(
        folder.resolve("sites.csv"),
        PRESENT.replace("people", "people,water_source,bacteria")
            + "S1,24,4,private_well,found,clock,7,40000\n");
    service(folder.toString(), "--site", "S1");
    assertThat(printed()).contains("verdict: Treat first", "Bacteria were found", "advice: ");
  }

  @Test
  void theOneThatIsAdvisedIsMarked() {
    for (String id : homes()) {
      ServiceStudy study = JOB.service(home(id));
      service(TOWN.toString(), "--site", id);
      List<String> lines = printed().lines().toList();
      String marks =
          lines.stream().filter(line -> line.strip().equals("ADVISED")).findFirst().orElseThrow();
      int column = (marks.length() - 20) / 20 - 1;
      assertThat(study.distinctOptions().get(column).kind()).as(id).isEqualTo(study.advice().way());
    }
  }

  /** Columns without present_, parted by blanks, and what is then printed. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "control=metered set_hardness_gpg=18 set_capacity_grains=20000 reserve_gal=100 days=12"
            + " regeneration_hour=3 resin_ft3=1.5 rated_grains=48000 age_years=9"
            + " dosage_lb_per_ft3=8 salt_bought_lb_per_year=640 hardness_after_gpg=1"
            + " readings=2026-01-03:12345_2026-04-02:28900 read_meter=house"
            + "|metered, at night, set to a hardness of 18.0 gpg, a capacity of 20,000 grains,"
            + " a reserve of 100 gal, after 12 days at the latest, at 3:00 a.m."
            + "|1.50 ft³ of resin, rated at 48,000 grains, age in years 9"
            + "|12.0 lb, by 8.0 lb/ft³, sodium chloride (salt)"
            + "|salt bought 640 lb a year|hardness behind it 1.0 gpg"
            + "|meter of the house 2 readings"
            + "|a day on average, from readings of the past months nine of ten such homes use",
        "control=weekdays weekdays=thu_mon vessel_diameter_in=9 vessel_height_in=48 salt_lb=9"
            + "|clock, weekdays, Monday and Thursday, at 2:00 a.m. (assumed)"
            + "|1.00 ft³ of resin (assumed), age not known"
            + "|salt each time 9.0 lb, sodium chloride (salt)|||||",
        "control=metered_at_once volume_gal=700 resin_ft3=1 regenerant=potassium_chloride"
            + " salt_bought_lb_per_year=500"
            + "|metered, at once, set to 700 gal bed 1.00 ft³ of resin, age not known"
            + "|lb, from what is bought, potassium chloride|at once||||",
        "control=clock days=1 resin_ft3=1"
            + "|clock, every day, at 2:00 a.m. (assumed)|10.0 lb (assumed), sodium|||||"
      })
  void whatWasFoundIsPrinted(
      String found, String a, String b, String c, String d, String e, String f, String g)
      throws IOException {
    List<String[]> cells = Stream.of(found.split(" ")).map(cell -> cell.split("=")).toList();
    String names =
        cells.stream().map(cell -> "present_" + cell[0]).collect(Collectors.joining(","));
    String values =
        cells.stream()
            .map(cell -> cell[0].matches("readings|weekdays") ? cell[1].replace('_', ' ') : cell[1])
            .collect(Collectors.joining(","));
    Files.writeString(
        folder.resolve("sites.csv"),
        "site_id,hardness_gpg,people," + names + "\nS1,18,3," + values + "\n");

    assertThat(service(folder.toString(), "--site", "S1")).as(err.toString()).isZero();
    String text = printed().replaceAll("\\s+", " ");
    Stream.of(a, b, c, d, e, f, g)
        .filter(Objects::nonNull)
        .forEach(words -> assertThat(text).contains(words));
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> object(Object json) {
    return (Map<String, Object>) json;
  }

  /** Without a price list nothing takes its place; 10 min at 0.5 gpm are 15 lb. */
  @Test
  void aSoftenerIsDescribedByOptionsAlone() throws IOException {
    assertThat(described(EXAMPLE + " --format json")).as(err.toString()).isZero();

    Map<String, Object> json = JSON.std.mapFrom(printed());
    assertThat(json).containsKeys("asFound", "setRight", "metered").containsEntry("replaced", null);
    assertThat(object(json.get("asFound"))).containsEntry("saltPerRegenerationLb", 15);
    assertThat(object(json.get("metered"))).containsEntry("price", null);
    assertThat(described(EXAMPLE)).isZero();
    assertThat(printed())
        .contains("clock, every 7 days", "rated at 40,000 grains", "by 10.0 min of refill")
        .containsPattern("as found +set right +with a meter\n")
        .doesNotContain("replaced by");
  }

  @Test
  void optionsGiveWhatARowGives() throws IOException {
    Files.writeString(
        folder.resolve("sites.csv"),
        "site_id,hardness_gpg,people,present_control,present_days,present_rated_grains,"
            + "present_refill_min,present_refill_gpm\nhome,24,4,clock,7,40000,10,0.5\n");
    assertThat(service(folder.toString(), "--site", "home", "--format", "json")).isZero();
    String row = printed();
    assertThat(described(EXAMPLE + " --format json")).isZero();
    assertThat(printed()).isEqualTo(row);
  }

  @Test
  void pricesOfAMeterAndAVisitGoBeforeTheDealers() throws IOException {
    String id = homes().get(0);
    assertThat(service(TOWN.toString(), "--site", id, "--format", "json", "--visit-price", "60"))
        .as(err.toString())
        .isZero();
    Map<String, Object> json = JSON.std.mapFrom(printed());
    Map<String, Object> own = JSON.std.mapFrom(ServiceJson.one(JOB.service(home(id)), words()));

    assertThat(object(object(json.get("setRight")).get("price")))
        .containsEntry("installation", 60.0);
    assertThat(object(json.get("metered")).get("price"))
        .isEqualTo(object(own.get("metered")).get("price"));
  }

  @Test
  void aReportIsWrittenForASoftenerDescribedByOptions() throws IOException {
    Path report = folder.resolve("reports/report.pdf");
    List<String> args = new ArrayList<>(List.of(EXAMPLE.split(" ")));
    args.addAll(List.of("--meter-price", "260", "--out", report.toString()));

    assertThat(service(args.toArray(String[]::new))).as(err.toString()).isZero();
    assertThat(printed()).isEqualTo("Service report written to " + report + System.lineSeparator());
    assertThat(Files.readAllBytes(report)).startsWith("%PDF".getBytes());
  }

  @Test
  void aReportIsOpenedAgain() throws IOException {
    String id = homes().get(0);
    Path report = folder.resolve("report.pdf");
    service(TOWN.toString(), "--site", id, "--format", "json", "--out", report.toString());
    String first = printed();

    assertThat(service(report.toString(), "--format", "json")).as(err.toString()).isZero();
    assertThat(printed()).isEqualTo(first);
  }

  @Test
  void aHomeWithErrorsBesideItIsSaidAndTheOneAskedForIsDone() throws IOException {
    Files.writeString(
        folder.resolve("sites.csv"), PRESENT + "S1,24,4,clock,7,40000\nS2,24,0,clock,7,40000\n");
    assertThat(service(folder.toString(), "--site", "S1")).isZero();
    assertThat(err.toString()).contains("sites.csv, row 3, column people");
    assertThat(printed()).contains("S1: ", "advice: ");
  }

  @ParameterizedTest
  @CsvSource({
    "--site A1,'nothing is known of a softener at home \"A1\"; fill present_control'",
    "--site A1,homes with a softener are: S1",
    "--site Z9,'no usable home \"Z9\"; homes are: A1, S1'",
    "'',name a home with --site; homes with a softener are: S1",
    "--site S1 --days 5,give either a JOBFOLDER or options of a home",
    "--site S1 --hardness 5gpg,give either a JOBFOLDER or options of a home",
    "--site S1 --format csv,'--format'",
    "--site S1 --meter-price much,'--meter-price: \"much\" is not a number'",
    "--site S1 --visit-price 1.234,'--visit-price: \"1.234\" has more decimals than USD has'",
  })
  void whatCannotBeStudiedInAFolderIsRefusedAndNothingIsWritten(String options, String words)
      throws IOException {
    Files.writeString(folder.resolve("sites.csv"), PRESENT + "A1,18,3,,,\nS1,24,4,clock,7,40000\n");
    Path report = folder.resolve("report.pdf");
    List<String> args = new ArrayList<>(List.of(folder.toString(), "--out", report.toString()));
    Stream.of(options.split(" ")).filter(each -> !each.isEmpty()).forEach(args::add);

    assertThat(service(args.toArray(String[]::new))).isEqualTo(2);
    assertThat(err.toString()).contains(words).doesNotContain("Exception", "\tat ");
    assertThat(out.toString()).isEmpty();
    assertThat(report).doesNotExist();
  }

  /** Each named by column and value; the home is not done. */
  @ParameterizedTest
  @CsvSource({
    "clock;;;40000;;;,present_days: is empty",
    "clock;0;;40000;;;,'present_days: \"0\" must be from 1 to 99'",
    "clock;100;;40000;;;,'present_days: \"100\" must be from 1 to 99'",
    "weekdays;;mom;40000;;;,'present_weekdays: \"mom\" is not a weekday'",
    "clock;7;;40000;10;9;,present_refill_min",
    "clock;7;;;10;;,present_rated_grains: is needed",
    "clock;7;;40000;;;2026-01-03:200 2026-03-03:100,'present_readings: \"2026-03-03:100\" is below'",
    "clock;7;;40000;;;2026-01-03:200,'present_readings: \"2026-01-03:200\" is one reading alone'"
  })
  void aWrongSoftenerIsNamedAndNothingIsWritten(String present, String words) throws IOException {
    Files.writeString(
        folder.resolve("sites.csv"),
        "site_id,hardness_gpg,people,present_control,present_days,present_weekdays,"
            + "present_rated_grains,present_refill_min,present_salt_lb,present_readings\n"
            + "S1,24,4,"
            + present.replace(';', ',')
            + "\n");
    Path report = folder.resolve("report.pdf");

    assertThat(service(folder.toString(), "--site", "S1", "--out", report.toString())).isEqualTo(1);
    assertThat(err.toString().replace(", column ", "").replace("row 2", ""))
        .contains(words)
        .doesNotContain("Exception");
    assertThat(report).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource({
    "--days 0,'--days: \"0\" must be from 1 to 99'",
    "--days 100,'--days: \"100\" must be from 1 to 99'",
    "--salt-lb 9,'stands beside --salt-lb'",
    "--site A1,--site is a home of a JOBFOLDER",
    "--weekdays mom,'--weekdays: \"mom\" is not a weekday'",
    "--readings 2026-01-03:200,'--readings: \"2026-01-03:200\" is one reading alone'"
  })
  void whatCannotBeDescribedIsRefusedByTheNameOfItsOption(String options, String words) {
    Path report = folder.resolve("report.pdf");
    String rest = EXAMPLE.replace(options.startsWith("--days") ? " --days 7" : "\0", "");
    assertThat(described(rest + " " + options + " --out " + report)).isEqualTo(2);
    assertThat(err.toString()).contains(words).doesNotContain("Exception", "present_");
    assertThat(out.toString()).isEmpty();
    assertThat(report).doesNotExist();
  }

  @Test
  void nothingAtAllAsksForAFolderOrAHome() {
    assertThat(service()).isEqualTo(2);
    assertThat(service("--meter-price", "5")).isEqualTo(2);
    assertThat(err.toString()).contains("name a JOBFOLDER, or describe a home with --hardness");
  }

  @Test
  void aFolderOrAPlaceBelowAFileIsNoPlaceForAReport() throws IOException {
    Path file = Files.writeString(folder.resolve("note.txt"), "a note");

    assertThat(described(EXAMPLE + " --out " + folder)).isEqualTo(2);
    assertThat(err.toString()).contains(folder + " is a folder; name a file in it");
    assertThat(described(EXAMPLE + " --format json --out " + file.resolve("r.pdf"))).isEqualTo(2);
    assertThat(err.toString()).contains(file + " cannot be made a folder");
    assertThat(out.toString()).isEmpty();
    assertThat(names(folder)).containsExactly("note.txt", "sites.csv");
  }

  @Test
  void itStandsAmongTheCommands() {
    assertThat(run("--help")).isZero();
    assertThat(printed())
        .containsSubsequence(
            "compare ", "propose ", "service ", "settings ", "form ", "check ", "page ");
    assertThat(run()).isEqualTo(2);
    assertThat(err.toString())
        .contains(
            "Name a command: compare, propose, service, settings, form, check, table or page.");
    assertThat(service("--help")).isZero();
    assertThat(printed()).contains("--refill-min", "--meter-price", "--visit-price", "--out");
  }
}
