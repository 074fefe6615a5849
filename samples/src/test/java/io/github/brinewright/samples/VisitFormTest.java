package io.github.brinewright.samples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.cli.Main;
import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.job.Column;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.job.SiteColumns;
import io.github.brinewright.proposal.Reopened;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Regenerant;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDComboBox;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** The form of a site visit, filled as a reader's program would, and what is made of it. */
class VisitFormTest {
  private static final String JOB = "job";
  private static final String DAY = "2026-10-01";

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    return line.execute(args);
  }

  static Stream<String> homes() throws IOException {
    return Files.readAllLines(Path.of(JOB, "sites.csv")).stream()
        .skip(1)
        .map(row -> row.substring(0, row.indexOf(',')));
  }

  private Path blank(String job) {
    Path form = folder.resolve("blank.pdf");
    assertThat(run("form", job, "--out", form.toString(), "--date", DAY)).isZero();
    return form;
  }

  /** Fills the fields by PDFBox, which writes values and draws them in its own way. */
  private Path filled(Path form, Map<String, String> values) throws IOException {
    Path target = folder.resolve("filled.pdf");
    try (PDDocument document = Loader.loadPDF(form.toFile())) {
      PDAcroForm fields = document.getDocumentCatalog().getAcroForm(null);
      for (Map.Entry<String, String> value : values.entrySet()) {
        PDField field = fields.getField(value.getKey());
        assertThat(field).as(value.getKey()).isNotNull();
        field.setValue(value.getValue());
      }
      document.save(target.toFile());
    }
    return target;
  }

  /** A row of sites.csv as a rep would enter it: fixtures are counted in fields of their own. */
  private static Map<String, String> entries(String id) throws IOException {
    Map<String, String> cells =
        new TreeMap<>(SiteCells.of(JobFiles.in(Path.of(JOB)), id).orElseThrow());
    String fixtures = cells.remove("fixtures");
    if (fixtures != null) {
      String[] parts = fixtures.split(" ");
      for (int i = 0; i < parts.length; i += 2) {
        cells.put("fixtures_" + parts[i + 1], parts[i]);
      }
    }
    return cells;
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  private byte[] proposal(String from, String id) throws IOException {
    Path target = folder.resolve("out-" + from.hashCode());
    List<String> args = new ArrayList<>(List.of("propose", from, "--date", DAY));
    if (Files.isDirectory(Path.of(from))) {
      args.addAll(List.of("--site", id));
    }
    args.addAll(List.of("--out", target.toString()));
    assertThat(run(args.toArray(String[]::new))).as(err.toString()).isZero();
    return Files.readAllBytes(target.resolve("proposal-" + id + ".pdf"));
  }

  @ParameterizedTest
  @MethodSource("homes")
  void aFilledFormGivesTheProposalOfTheRowByteForByte(String id) throws IOException {
    byte[] fromRow = proposal(JOB, id);
    Path typed = filled(blank(JOB), entries(id));
    assertThat(proposal(typed.toString(), id)).isEqualTo(fromRow);

    Path begun = folder.resolve("begun.pdf");
    assertThat(run("form", JOB, "--site", id, "--out", begun.toString(), "--date", DAY)).isZero();
    assertThat(proposal(begun.toString(), id)).isEqualTo(fromRow);
  }

  @Test
  void aBlankFormSaysWhatIsNeededInItsOwnWords() {
    assertThat(run("propose", blank(JOB).toString(), "--out", folder.resolve("x").toString()))
        .isEqualTo(1);
    assertThat(err.toString())
        .contains("blank.pdf: nothing is filled in; needed are")
        .contains("\"Short name of the home *\", \"Hardness, gpg\", \"People *\"")
        .doesNotContain("sites.csv");
    assertThat(folder.resolve("x")).doesNotExist();
    assertThat(run("compare", folder.resolve("blank.pdf").toString())).isEqualTo(1);
    assertThat(err.toString()).doesNotContain("usable home");
  }

  @Test
  void whatIsMissingIsNamedByItsLabel() throws IOException {
    Path form = filled(blank(JOB), Map.of("customer", "Ann"));

    assertThat(run("check", form.toString())).isEqualTo(1);
    assertThat(err.toString())
        .contains("filled.pdf, field \"Short name of the home *\": must be 1 to 40 letters")
        .contains("field \"Hardness, gpg\": is needed, or \"Hardness, mg/L as CaCO₃\" instead")
        .contains("field \"People *\": is empty; a value from 1 to 40 is needed");
  }

  @Test
  void aFormWithoutANewerFieldIsReadAllTheSame() throws IOException {
    Path form = filled(blank(JOB), entries("H13"));
    Path older = folder.resolve("older.pdf");
    try (PDDocument document = Loader.loadPDF(form.toFile())) {
      PDAcroForm fields = document.getDocumentCatalog().getAcroForm(null);
      fields.setFields(
          fields.getFields().stream()
              .filter(field -> !field.getPartialName().equals("language"))
              .toList());
      document.save(older.toFile());
    }
    assertThat(proposal(older.toString(), "H13")).isEqualTo(proposal(JOB, "H13"));
  }

  @Test
  void wrongEntriesAreNamedByTheirLabel() throws IOException {
    Map<String, String> values = entries("H01");
    values.put("ph", "74");
    values.put("tested_on", "yesterday");
    values.put("fixtures_shower", "two");
    values.put("iron_mg_per_l", "0,8");
    Path form = filled(blank(JOB), values);

    assertThat(run("check", form.toString())).isEqualTo(1);
    assertThat(err.toString())
        .contains("filled.pdf, field \"pH\": \"74\" must be from 0 to 14")
        .contains("field \"Tested on (year-month-day)\": \"yesterday\" is not a date")
        .contains("field \"Iron, mg/L\": \"0,8\" has a comma")
        .contains("\"two\"");
  }

  @Test
  void aCommaIsADecimalWhereTheFormsLanguageWritesOne() throws IOException {
    Path job = jobIn("fr-CA");
    Map<String, String> values =
        Map.of("site_id", "A", "hardness_gpg", "18,5", "people", "3", "street", "12,5 rue");
    Path form = filled(blank(job.toString()), values);

    assertThat(run("compare", form.toString(), "--format", "json")).isZero();
    assertThat(out.toString()).contains("\"hardnessGpg\" : 18.5");
  }

  @Test
  void aLaboratorysWordsAreTakenInTheFormsLanguage() throws IOException {
    Path job = jobIn("fr-CA");
    Map<String, String> values =
        new TreeMap<>(Map.of("site_id", "A", "hardness_gpg", "18", "people", "3"));
    values.put("iron_mg_per_l", "<0,05");
    values.put("manganese_mg_per_l", "< 0,5");
    values.put("nitrate_mg_per_l", "Non détecté");
    values.put("chloride_mg_per_l", "traces");
    Path form = filled(blank(job.toString()), values);

    assertThat(run("check", form.toString())).isEqualTo(1);
    assertThat(err.toString().lines().filter(line -> line.contains("champ")))
        .singleElement()
        .asString()
        .contains("champ \"Chlorure, mg/L\" : \"traces\" n’est pas un résultat");
  }

  /** A job folder of a dealer who writes in a language. */
  private Path jobIn(String locale) throws IOException {
    Path job = Files.createDirectory(folder.resolve(locale));
    Files.writeString(job.resolve("dealer.properties"), "locale=" + locale + "\n");
    return job;
  }

  private PresentSoftener presentOf(Path job, Map<String, String> values) throws Exception {
    Map<String, String> all =
        new TreeMap<>(Map.of("site_id", "A", "hardness_gpg", "18", "people", "3"));
    all.putAll(values);
    Reopened form = Reopened.read(Files.readAllBytes(filled(blank(job.toString()), all)));
    assertThat(form.problems()).isEmpty();
    return form.home().orElseThrow().site().present().orElseThrow();
  }

  @Test
  void theSoftenerInTheHouseComesBackFromAForm() throws Exception {
    PresentSoftener present =
        presentOf(
            jobIn("fr-CA"),
            Map.of(
                "present_control", "weekdays",
                "present_weekdays", "lun jeu",
                "present_resin_ft3", "1,25",
                "present_refill_min", "10",
                "present_refill_gpm", "0,5",
                "present_regenerant", "potassium_chloride",
                "present_readings", "2026-01-03:12345,5 2026-04-02:18900",
                "present_read_meter", "house"));

    MeterReading winter = new MeterReading(LocalDate.of(2026, 1, 3), Volume.ofGallons(12_345.5));
    MeterReading spring = new MeterReading(LocalDate.of(2026, 4, 2), Volume.ofGallons(18_900));
    assertThat(present)
        .isEqualTo(
            PresentSoftener.of(
                    PresentControl.weekdays(Set.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY)))
                .resinVolume(Volume.ofCubicFeet(1.25))
                .salt(
                    new PresentSalt.Refill(
                        Duration.ofMinutes(10), Optional.of(FlowRate.ofGallonsPerMinute(0.5))))
                .regenerant(Regenerant.POTASSIUM_CHLORIDE)
                .readings(ReadMeter.HOUSE, List.of(winter, spring))
                .build());
  }

  @Test
  void aFormOffersTheDealersOwnResins() throws Exception {
    Path job = jobIn("en-US");
    Files.writeString(
        job.resolve("resins.csv"),
        "resin_id,dosage_lb_per_ft3,capacity_grains_per_ft3,name\n"
            + "old,5,18000,Old stock\nold,15,27000,\n");
    Path form = blank(job.toString());
    try (PDDocument document = Loader.loadPDF(form.toFile())) {
      PDComboBox resins =
          (PDComboBox) document.getDocumentCatalog().getAcroForm(null).getField("present_resin_id");
      assertThat(resins.getOptionsExportValues()).contains("standard-gel", "old");
      assertThat(resins.getOptionsDisplayValues()).contains("Fine mesh", "Old stock");
    }
    Map<String, String> values =
        Map.of(
            "present_control", "clock",
            "present_days", "7",
            "present_rated_grains", "40000",
            "present_resin_id", "old");

    assertThat(presentOf(job, values).resin().orElseThrow().name()).isEqualTo("Old stock");
  }

  @Test
  void whatIsWrongWithTheSoftenerInTheHouseIsNamedByItsLabel() throws IOException {
    Path form =
        filled(
            blank(jobIn("es-US").toString()),
            Map.of(
                "site_id", "A",
                "hardness_gpg", "18",
                "people", "3",
                "present_days", "100",
                "present_weekdays", "lux",
                "present_salt_lb", "9",
                "present_refill_min", "10"));

    assertThat(run("check", form.toString())).isEqualTo(1);
    assertThat(err.toString())
        .contains("campo \"Días fijados\": \"100\" debe estar entre 1 y 99")
        .contains("campo \"Semana (lun jue)\": \"lux\" no es un día de la semana")
        .contains("campo \"Se regenera por\": está vacío; escriba qué inicia la regeneración")
        .contains("campo \"Relleno, minutos\": \"10\" está junto a \"Sal cada vez, lb\"")
        .contains("campo \"Capac. nominal, granos\": hace falta, o bien \"Volumen de resina, ft³\"")
        .doesNotContain("present_", "sites.csv");
  }

  @Test
  void aFormSaysWhatIsWrongInItsOwnLanguage() throws IOException {
    Path job = jobIn("es-US");
    Path form = filled(blank(job.toString()), Map.of("site_id", "A", "people", "99"));

    assertThat(run("check", form.toString())).isEqualTo(1);
    assertThat(err.toString())
        .contains("filled.pdf, campo \"Personas *\": \"99\" debe estar entre 1 y 40")
        .contains("hace falta, o bien \"Dureza, mg/L")
        .doesNotContain("must be");
  }

  @Test
  void aFormWithoutItsFieldsIsExplained() throws IOException {
    Path flat = folder.resolve("flat.pdf");
    try (PDDocument document = Loader.loadPDF(blank(JOB).toFile())) {
      document.getDocumentCatalog().getAcroForm(null).flatten();
      document.save(flat.toFile());
    }
    assertThat(run("compare", flat.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("has lost its fields");
  }

  @Test
  void aSettingsSheetComesFromAFormToo() throws IOException {
    Path form = filled(blank(JOB), entries("H02"));
    Path sheet = folder.resolve("sheet.pdf");

    assertThat(run("settings", form.toString(), "--unit", "SORREL-1", "--out", sheet.toString()))
        .isZero();
    assertThat(sheet).exists();
    assertThat(err.toString()).contains("prices are those that the form brought, of " + DAY);
  }

  @Test
  void aFormMayBeQuotedAtTodaysPrices() throws IOException {
    Path today = Files.createDirectory(folder.resolve("today"));
    Files.writeString(
        today.resolve("units.csv"),
        "unit_id,name,resin_ft3,dosages_lb_per_ft3,price\nN1,New unit,1.5,6 8,1234.56\n");
    String form =
        filled(blank(JOB), Map.of("site_id", "A", "hardness_gpg", "18", "people", "3")).toString();
    String target = folder.resolve("x").toString();

    assertThat(run("propose", form, "--prices", today.toString(), "--out", target)).isZero();
    assertThat(err.toString()).doesNotContain("prices are those");
    assertThat(text(Path.of(target, "proposal-A.pdf")))
        .contains("New unit", "$1,234.56")
        .doesNotContain("Sorrel", "Noughtmarl Water");
    assertThat(run("propose", JOB, "--all", "--prices", today.toString(), "--out", target))
        .isEqualTo(2);
    assertThat(run("propose", form, "--prices", "nowhere", "--out", target)).isEqualTo(2);
    assertThat(err.toString()).contains("--prices takes a folder");
  }

  @Test
  void wrongUsageOfTheFormIsExplained() {
    String target = folder.resolve("f.pdf").toString();
    assertThat(run("form", JOB, "--site", "Z9", "--out", target)).isEqualTo(2);
    assertThat(run("form", folder.resolve("nowhere").toString(), "--out", target)).isEqualTo(2);
    assertThat(run("propose", JOB, "--out", target)).isEqualTo(2);
    assertThat(run("settings", JOB, "--unit", "SORREL-1", "--out", target)).isEqualTo(2);
    assertThat(err.toString())
        .contains("there is no home \"Z9\"")
        .contains("is not a folder")
        .contains("name a home with --site, or write all with --all")
        .doesNotContain("Exception");
    assertThat(folder.resolve("f.pdf")).doesNotExist();
  }

  /** PDF/A-3, 6.2.11.4.1: fonts are embedded; and programs centre what is typed by its height. */
  @Test
  void whatIsTypedIsInAnEmbeddedFontOfKnownHeight() throws IOException {
    try (PDDocument document = Loader.loadPDF(blank(JOB).toFile())) {
      PDAcroForm form = document.getDocumentCatalog().getAcroForm(null);
      PDFont font = form.getDefaultResources().getFont(COSName.getPDFName("Field"));

      assertThat(font.isEmbedded()).isTrue();
      assertThat(font.getFontDescriptor().getCapHeight())
          .as("Source Sans 3 Regular: 660 of 1000, as its OS/2 table says")
          .isEqualTo(660);
      assertThat(font.getStringWidth("Ñandú €5 «été»")).isPositive();
    }
  }

  /** Names of fields are columns, or kinds of fixtures, in every language. */
  @Test
  void everyColumnHasItsField() throws IOException {
    try (PDDocument document = Loader.loadPDF(blank(JOB).toFile())) {
      PDAcroForm form = document.getDocumentCatalog().getAcroForm(null);
      List<String> names = form.getFields().stream().map(PDField::getPartialName).toList();
      assertThat(names)
          .containsAll(
              SiteColumns.all().stream()
                  .map(Column::name)
                  .filter(
                      column -> !Set.of("fixtures", "quote_number", "revision").contains(column))
                  .toList());
      assertThat(form.getFields())
          .allSatisfy(field -> assertThat(field.getAlternateFieldName()).isNotBlank());
      assertThat(names).doesNotHaveDuplicates().allMatch(n -> n.equals(n.toLowerCase(Locale.ROOT)));
    }
  }
}
