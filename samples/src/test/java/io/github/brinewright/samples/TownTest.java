package io.github.brinewright.samples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.study.DosageStudy;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The proposals of the invented town, read back. */
class TownTest {
  private static final JobReading READING = JobFolder.read(Path.of("job"));
  private static final Job JOB = READING.job().orElseThrow();
  private static final LocalDate DAY = LocalDate.of(2026, 10, 1);
  private final Wording words = Wording.of(Locale.US, UnitSystem.US);

  static Stream<String> homes() {
    return JOB.homes().stream().map(home -> home.site().id());
  }

  private static Comparison compare(String id) {
    QuotedHome home = JOB.home(id).orElseThrow();
    return JOB.compare(home);
  }

  private static byte[] pdf(Comparison comparison) {
    return new Proposal(comparison, JOB.study(comparison).orElse(null), JOB.dealer(), DAY).toPdf();
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void theTownIsWellFormedAndVaried() {
    assertThat(READING.problems()).isEmpty();
    assertThat(JOB.homes()).hasSizeGreaterThanOrEqualTo(12);
    assertThat(JOB.prices().offers()).hasSizeGreaterThanOrEqualTo(8);
    List<Comparison> all = homes().map(TownTest::compare).toList();
    assertThat(all.stream().filter(c -> c.recommended().isEmpty()))
        .as("one home that no unit can serve")
        .hasSize(1);
    assertThat(
            all.stream()
                .flatMap(c -> c.recommended().stream())
                .map(candidate -> candidate.softener().id())
                .distinct())
        .as("different homes get different units")
        .hasSizeGreaterThanOrEqualTo(4);
  }

  @ParameterizedTest
  @MethodSource("homes")
  void everyPrintedNumberIsAComputedOne(String id) throws IOException {
    Comparison comparison = compare(id);
    PrintedNumbers numbers =
        new PrintedNumbers().allowAllOf(comparison).allowText(texts()).allowText(inputs());
    for (Candidate candidate : comparison.candidates()) {
      candidate.quote().monthlyPayment().ifPresent(m -> numbers.allow(m.getAmount()));
      candidate.quote().totalFinanced().ifPresent(m -> numbers.allow(m.getAmount()));
      numbers.allow(candidate.quote().balance().getAmount());
      for (int year = 0; year <= candidate.life().years(); year++) {
        numbers.allow(candidate.life().after(year).getAmount());
        numbers.allow(BigDecimal.valueOf(year));
      }
      numbers.allow(BigDecimal.valueOf(candidate.design().addedIons().sodiumMilligramsPerGlass()));
      numbers.allow(BigDecimal.valueOf(candidate.design().addedIons().sodiumMilligramsPerDay()));
      numbers.allow(
          BigDecimal.valueOf(comparison.home().site().water().hardness().milligramsPerLitre()));
      comparison.against(candidate).ifPresent(reason -> numbers.allowText(words.reason(reason)));
      candidate.findings().forEach(finding -> numbers.allowText(words.finding(finding)));
    }
    comparison.whyRecommended().ifPresent(reason -> numbers.allowText(words.reason(reason)));
    Arrays.stream(Caution.values()).forEach(c -> numbers.allowText(words.caution(c)));
    for (int tick = 0; tick <= 100; tick++) {
      numbers.allow(BigDecimal.valueOf(500L * tick));
    }
    allowWater(numbers, comparison);
    JOB.study(comparison).ifPresent(study -> allowStudy(numbers, study));

    List<String> printed = PrintedNumbers.in(text(pdf(comparison)));

    assertThat(printed).hasSizeGreaterThan(150);
    assertThat(printed.stream().filter(number -> !numbers.allows(number))).isEmpty();
  }

  private static void allowStudy(PrintedNumbers numbers, HomeStudy study) {
    numbers.allow(BigDecimal.valueOf(study.years()));
    study.costs().values().forEach(cost -> numbers.allow(cost.getAmount()));
    study.meterSaves().ifPresent(saves -> numbers.allow(saves.getAmount()));
    study.dosage().ifPresent(dosage -> allowDosage(numbers, dosage));
    for (SimulatedYears one : study.controls().values()) {
      allowSpreads(numbers, one);
      numbers.allow(BigDecimal.valueOf(100 * one.unusedShare()));
      for (SimulatedYears other : study.controls().values()) {
        numbers.allow(BigDecimal.valueOf(one.salt().minus(other.salt()).pounds()));
        numbers.allow(BigDecimal.valueOf(one.water().minus(other.water()).gallons()));
      }
    }
    double extra = study.candidate().offer().meterExtra().getAmount().doubleValue();
    numbers.allow(BigDecimal.valueOf(extra));
    study
        .meterSaves()
        .filter(saves -> !saves.isZero())
        .ifPresent(
            saves -> numbers.allow(BigDecimal.valueOf(extra / saves.getAmount().doubleValue())));
  }

  private static void allowDosage(PrintedNumbers numbers, DosageStudy dosage) {
    Stream.of(dosage.best().dosage(), dosage.flat().low(), dosage.flat().high())
        .forEach(d -> numbers.allow(BigDecimal.valueOf(d.poundsPerCubicFoot())));
  }

  private static void allowSpreads(PrintedNumbers numbers, SimulatedYears outcome) {
    Stream.of(
            outcome.regenerations(),
            outcome.saltPounds(),
            outcome.waterGallons(),
            outcome.hardDays(),
            outcome.cycleGallons())
        .flatMap(spread -> Stream.of(spread.mean(), spread.low(), spread.high()))
        .forEach(value -> numbers.allow(BigDecimal.valueOf(value)));
  }

  private void allowWater(PrintedNumbers numbers, Comparison comparison) {
    var site = comparison.home().site();
    site.water().temperature().ifPresent(t -> numbers.allowText(words.figure(Figure.of(t))));
    numbers.allow(BigDecimal.valueOf(site.household().bathrooms()));
    var allowances = site.allowances();
    for (var substance : io.github.brinewright.home.Substance.values()) {
      var found = site.water().foundOrNone(substance);
      numbers.allow(BigDecimal.valueOf(found.milligramsPerLitre()));
      numbers.allow(
          BigDecimal.valueOf(allowances.iron().forConcentration(found).grainsPerGallon()));
      numbers.allow(
          BigDecimal.valueOf(allowances.manganese().forConcentration(found).grainsPerGallon()));
    }
  }

  private static String texts() throws IOException {
    try (var in =
        Proposal.class.getResourceAsStream(
            "/io/github/brinewright/internal/section/texts.properties")) {
      String texts = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      return texts.replaceAll("\\{\\d}", "")
          + " 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20";
    }
  }

  private static String inputs() throws IOException {
    StringBuilder all = new StringBuilder();
    for (String file :
        new String[] {"sites.csv", "units.csv", "tariffs.csv", "dealer.properties"}) {
      all.append(Files.readString(Path.of("job", file)).replace(",", " ")).append(' ');
    }
    return all.append(DAY.getYear()).append(" 31 30 8.90 36 2.3 4.1 3.0").toString();
  }

  @ParameterizedTest
  @MethodSource("homes")
  void whatMustBeSaidIsSaid(String id) throws IOException {
    Comparison comparison = compare(id);
    String text = text(pdf(comparison));

    assertThat(text).contains(comparison.home().site().contact().name());
    for (Caution caution : List.of(Caution.LOCAL_RULES, Caution.NOT_A_PURIFIER, Caution.SODIUM)) {
      assertThat(joined(text)).contains(joined(words.caution(caution)));
    }
    comparison.homeFindings().stream()
        .filter(finding -> finding.severity() != io.github.brinewright.finding.Severity.NOTE)
        .forEach(finding -> assertThat(joined(text)).contains(joined(words.finding(finding))));
    for (Candidate candidate : comparison.columns(5)) {
      assertThat(joined(text)).contains(joined(candidate.softener().name()));
      assertThat(text).contains(words.about(candidate.life().total()).replace("$", ""));
    }
    comparison
        .recommended()
        .ifPresentOrElse(
            candidate -> assertRecommended(candidate, text),
            () -> assertNothingSold(comparison, text));
  }

  private void assertRecommended(Candidate candidate, String text) {
    assertThat(text)
        .contains("We recommend", "Recommended:", "Acceptance", "Signature")
        .contains(words.figure(Figure.of(candidate.quote().total())));
    for (CostKind kind : CostKind.values()) {
      assertThat(text).contains(words.term(kind) + " ");
    }
  }

  private void assertNothingSold(Comparison comparison, String text) {
    assertThat(text).contains("None of our units suits this home").doesNotContain("Acceptance");
    Finding first =
        comparison.closest().findings().stream().filter(Finding::stops).findFirst().orElseThrow();
    assertThat(joined(text)).contains(joined(words.finding(first)));
  }

  /** Without spaces, so that line breaks do not matter. */
  private static String joined(String text) {
    return text.replaceAll("\\s+", "");
  }

  @ParameterizedTest
  @MethodSource("homes")
  void theBodyHasFourToSixPagesAndEachIsNumbered(String id) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(compare(id)))) {
      int pages = document.getNumberOfPages();
      int appendix = pageOf("Appendix: how it was worked out", document);
      int least = compare(id).recommended().isPresent() ? 4 : 3;
      assertThat(appendix - 1).as("pages before the appendix").isBetween(least, 6);
      assertThat(pages).as("pages in all").isBetween(4, 8);
      assertThat(pages - appendix + 1).as("pages of the appendix").isBetween(1, 3);
      assertThat(document.getDocumentInformation().getTitle())
          .startsWith("Water softening proposal");
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
      assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612);
      String text = new PDFTextStripper().getText(document);
      for (int page = 1; page <= pages; page++) {
        assertThat(text).contains("Page " + page + " of " + pages);
      }
    }
  }

  private static int pageOf(String heading, PDDocument document) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    for (int page = 1; page <= document.getNumberOfPages(); page++) {
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      if (stripper.getText(document).contains(heading)) {
        return page;
      }
    }
    throw new AssertionError("no page is headed " + heading);
  }

  @Test
  void theTableOfClockAgainstMeterIsKept() throws IOException {
    Path page = Path.of("CLOCK-AGAINST-METER.md");
    String text =
        "# Clock against meter in the invented town\n\nWritten by the test run; simulated, mean and"
            + " (nine years of ten). Use varies as in DAIAD open meter data.\n\n"
            + ClockAgainstMeter.table(JOB);
    if ("write".equals(System.getProperty("brinewright.pages"))) {
      Files.writeString(page, text);
    }
    assertThat(page).content().as("renew it with -Dbrinewright.pages=write").isEqualTo(text);
    assertThat(text).as("homes where a meter is not worth its price").contains("**no**");
  }

  @Test
  void theSameInputGivesTheSameBytesOnAnyThread() {
    byte[] alone = pdf(compare("H01"));

    assertThat(IntStream.range(0, 16).parallel().mapToObj(i -> pdf(compare("H01"))))
        .allSatisfy(pdf -> assertThat(pdf).isEqualTo(alone));
  }
}
