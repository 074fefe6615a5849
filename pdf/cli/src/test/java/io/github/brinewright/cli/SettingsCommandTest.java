package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.CandidateChoice;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.proposal.SettingsSheet;
import io.github.brinewright.regeneration.ReserveForm;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.sizing.ControlOptions;
import io.github.brinewright.softener.Control;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** Settings sheets of any softener, from the command line. */
class SettingsCommandTest extends CommandTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 2);
  private static final String ANY =
      "settings --hardness 24gpg --people 4 --rated-grains 40000 --refill-gpm 0.5";
  private static final String SITES_WITH_SOFTENERS =
      "site_id,hardness_gpg,people,present_control,present_days,present_rated_grains\n"
          + "clock,24,4,clock,7,40000\nnone,24,4,,,\nsmall,45,8,clock,2,16000\n";

  private Path sheet = Path.of("");

  @BeforeEach
  void namesASheet() throws IOException {
    sheet = folder.resolve("sheet.pdf");
    Files.writeString(folder.resolve("sites.csv"), SITES_WITH_SOFTENERS);
  }

  private int write(String arguments) {
    List<String> all = new ArrayList<>(List.of(arguments.split(" ")));
    all.addAll(List.of("--out", sheet.toString()));
    return run(all.toArray(String[]::new));
  }

  private int ofFolder(String arguments) {
    return write(("settings " + folder + " " + arguments).strip());
  }

  private String text() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(sheet.toFile())) {
      return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }
  }

  private Proposals documents() {
    return Proposals.of(job());
  }

  private Job job() {
    return JobFolder.read(folder).job().orElseThrow();
  }

  private QuotedHome home(String id) {
    return job().home(id).orElseThrow();
  }

  /** Usable 32,000 grains; 300 gal of 24 gpg a day are 7,200, and the days vary. */
  @ParameterizedTest
  @CsvSource({
    "clock,Days between regenerations,Volume between,Time of day",
    "weekdays,Days of the week to set Monday,Volume between,Longest gap",
    "metered_at_night,Volume between regenerations,Days between,Reserve set besides",
    "metered_at_once,Volume between regenerations,Hour of the regeneration,Begins after"
  })
  void eachControlHasASheetOfWhatItTakesWithoutAJobFolder(
      String control, String takes, String takesNot, String takesToo) throws IOException {
    assertThat(write(ANY + " --control " + control)).as(err.toString()).isZero();
    assertThat(out.toString()).contains("Settings sheet written to " + sheet);
    assertThat(text())
        .contains("softener rated 40,000 grains", takes, takesToo)
        .doesNotContain(takesNot);
  }

  @ParameterizedTest
  @EnumSource
  void aSoftenerInNoPriceListHasTheSheetOfTheLibrary(Control control) throws IOException {
    String word = control.name().toLowerCase(Locale.ROOT);
    assertThat(write(ANY + " --control " + word + " --date 2026-11-02")).isZero();

    QuickHome quick = described(word);
    Job job = quick.job();
    Comparison comparison = job.compare(job.homes().get(0));
    SettingsSheet same =
        new SettingsSheet(comparison, comparison.closest(), job.dealer(), DAY).unlisted();
    assertThat(comparison.closest().setup().control()).isEqualTo(control);
    assertThat(sheet).hasBinaryContent(same.toPdf());
  }

  private static QuickHome described(String control) {
    QuickHome quick = new QuickHome();
    CommandSpec spec = CommandSpec.create();
    quick.addTo(spec);
    new CommandLine(spec).parseArgs((ANY + " --control " + control).substring(9).split(" "));
    return quick;
  }

  @Test
  void theLanguageOfTheHomeIsThatOfASheetWithoutADealer() throws IOException {
    assertThat(write(ANY + " --control clock --language fr")).as(err.toString()).isZero();
    assertThat(text()).contains("Feuille de réglages", "Jours entre régénérations");
  }

  @Test
  void hourDayAndReserveReachTheSheet() throws IOException {
    int code =
        ofFolder(
            "--site clock --unit bed-2 --control metered_at_night --date 2026-11-02"
                + " --hour 4 --start 2026-12-31 --reserve separate");
    ControlOptions options =
        new ControlOptions(LocalDate.of(2026, 12, 31), 4, ReserveForm.SEPARATE);
    CandidateChoice choice = CandidateChoice.ofSoftener("bed-2").control(Control.METERED_AT_NIGHT);

    assertThat(code).as(err.toString()).isZero();
    assertThat(sheet)
        .hasBinaryContent(documents().settings(home("clock"), choice, DAY, options).orElseThrow());
    assertThat(text()).contains("4:00 a.m.", "December 31, 2026", "Reserve set besides: use this");
  }

  @Test
  void daysCountFromTheDateOfTheSheetUnlessAnotherIsNamed() throws IOException {
    assertThat(write(ANY + " --control clock --date 2026-11-02")).isZero();
    assertThat(text()).contains("if set on November 2, 2026");
  }

  @ParameterizedTest
  @CsvSource({"'',SET_RIGHT", "' --with-meter',METERED"})
  void theSoftenerInTheHouseIsSetRight(String more, ServiceOption.Kind kind) throws IOException {
    assertThat(ofFolder("--site clock --present --date 2026-11-02" + more))
        .as(err.toString())
        .isZero();
    assertThat(sheet)
        .hasBinaryContent(
            documents()
                .presentSettings(home("clock"), kind, DAY, ControlOptions.on(DAY))
                .orElseThrow());
    assertThat(text()).contains("the softener in the house", "Now set to");
  }

  private void refused(int code, String... said) {
    assertThat(code).as(err.toString()).isEqualTo(2);
    assertThat(err.toString()).contains(said).doesNotContain("\tat ");
    assertThat(sheet).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --hardness 24gpg --people 4 --rated-grains 40000 --control wednesday | --control: "wednesday" is not known
          --people 4 --rated-grains 40000 --control clock | --hardness: is needed
          --hardness 24gpg --people 4 --control clock | --rated-grains or --resin-ft3
          --hardness 24gpg --people 4 | --rated-grains or --resin-ft3
          --hardness 24gpg --people 4 --rated-grains 40000 --hour 24 | hour of the regeneration is 24, but must be from 0 to 23
          --hardness 24gpg --people 4 --rated-grains 40000 --hour -1 | hour of the regeneration is -1
          --hardness 24gpg --people 4 --rated-grains 40000 --hour noon | '--hour'
          --hardness 24gpg --people 4 --rated-grains 40000 --start 2026-02-30 | '--start'
          --hardness 24gpg --people 4 --rated-grains 40000 --date tomorrow | '--date'
          --hardness 24gpg --people 4 --rated-grains 40000 --reserve twice | '--reserve'
          --hardness 24gpg --people 4 --rated-grains 40000 --present | need a JOBFOLDER
          --hardness 24gpg --people 4 --rated-grains 40000 --unit bed-1 | need a JOBFOLDER
          --hardness 24gpg --people 4 --rated-grains -5 | --rated-grains
          --unit bed-1 | need a JOBFOLDER
          """)
  void whatIsWrongWithoutAFolderIsNamedAndNothingWritten(String arguments, String said) {
    refused(write("settings " + arguments), said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --site clock --unit bed-1 --hardness 24gpg | either a JOBFOLDER or options of a home, not both
          --site clock --unit bed-1 --rated-grains 40000 | either a JOBFOLDER or options of a home, not both
          --site clock --unit bed-1 --control wednesday | --control is "wednesday", but must be one of clock, weekdays
          --site clock --unit bed-1 --dosage much | --dosage is "much"
          --site clock --unit bed-1 --hour 24 | but must be from 0 to 23
          --site clock --unit bed-9 | there is no unit "bed-9"
          --site clock | name a unit with --unit, or give --present
          --unit bed-1 | name a home with --site
          --site clock --unit bed-1 --with-meter | --with-meter goes with --present
          --site clock --present --unit bed-1 | leave out --unit
          --site clock --present --control clock | leave out --unit
          --site none --present | home "none" has no present softener
          --site small --present | no setting of the present softener serves home "small"
          """)
  void whatIsWrongWithAFolderIsNamedAndNothingWritten(String arguments, String said) {
    refused(ofFolder(arguments), said);
  }

  @ParameterizedTest
  @CsvSource({
    "clock,Days between regenerations",
    "Weekdays,Days of the week",
    "METERED_AT_NIGHT,Volume between regenerations"
  })
  void aControlOfAUnitMayBeNamedInAnyCase(String control, String takes) throws IOException {
    Files.writeString(
        folder.resolve("units.csv"),
        "unit_id,resin_ft3,dosages_lb_per_ft3,controls,price\n"
            + "U1,1.5,6,clock weekdays metered_at_night,900\n");

    assertThat(ofFolder("--site clock --unit U1 --control " + control)).as(err.toString()).isZero();
    assertThat(text()).contains(takes);
  }
}
