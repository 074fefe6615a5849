package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.demand.DailyUse;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.proposal.ServiceReport;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.Fault;
import io.github.brinewright.service.FaultKind;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.sizing.Assumption;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The report on a softener that is in the house already. */
class ServiceReportTest {
  private static final String CASES =
      "io.github.brinewright.documents.PresentHomes#idsAndLanguages";
  private static final Map<String, byte[]> PDFS = new ConcurrentHashMap<>();
  private static final Wording ENGLISH = DemoTown.words(DemoTown.dealer("en-US"));

  @BeforeAll
  static void start() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private static ServiceReport report(String id, String tag) {
    return new ServiceReport(PresentHomes.study(id), DemoTown.dealer(tag), DemoTown.DAY);
  }

  /** Written once for all tests. */
  private static byte[] pdf(String id, String tag) {
    return PDFS.computeIfAbsent(id + " in " + tag, key -> report(id, tag).toPdf());
  }

  private static String text(String id, Wording words) {
    return WholeText.of(report(id, "en-US").model(), words);
  }

  private static String text(String id) {
    return text(id, ENGLISH);
  }

  private static String plain(String text) {
    return text.replace('\u00A0', ' ').replace('\u202F', ' ');
  }

  @ParameterizedTest
  @MethodSource(CASES)
  void itSaysWhatIsComputed(String id, String tag) {
    Wording words = DemoTown.words(DemoTown.dealer(tag));

    LabelledValuesTest.check(
        report(id, tag).model(), words, new ExpectedService(PresentHomes.study(id), words));
  }

  @ParameterizedTest
  @MethodSource(CASES)
  void everyLabelledValueIsDrawnBesideItsLabel(String id, String tag) throws IOException {
    DrawnValuesTest.check(
        report(id, tag).model(), pdf(id, tag), DemoTown.words(DemoTown.dealer(tag)), 15);
  }

  @ParameterizedTest
  @MethodSource(CASES)
  void itHasTwoPagesOnWhichNothingOverlaps(String id, String tag) throws IOException {
    byte[] pdf = pdf(id, tag);
    TextBoxes boxes = TextBoxes.of(pdf);

    assertThat(boxes.pages()).isEqualTo(2);
    assertThat(boxes.overlaps()).isEmpty();
    assertThat(boxes.outsideTheMargins()).isEmpty();
    assertThat(ReadAloud.of(pdf).outOfOrder()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("io.github.brinewright.documents.PresentHomes#manyKinds")
  void itIsAccessibleAndFitForAnArchive(String id, String tag) throws Exception {
    byte[] pdf = pdf(id, tag);

    assertThat(StandardsTest.failures(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(StandardsTest.failures(pdf, PDFAFlavour.PDFA_3_A)).isEmpty();
    assertThat(PaintedColours.of(pdf).text())
        .allSatisfy(ink -> assertThat(ink.contrastWith(Ink.PAPER)).isGreaterThanOrEqualTo(4.5));
  }

  /** The widest letters, on the smaller paper. */
  @ParameterizedTest
  @MethodSource("io.github.brinewright.documents.PresentHomes#ids")
  void itHasTwoPagesInLongWordsAndMetricUnitsOnTheSmallerPaper(String id) throws IOException {
    Dealer dealer =
        DemoTown.JOB.dealer().writing(Locale.CANADA_FRENCH, Dealer.Paper.LETTER, UnitSystem.METRIC);
    byte[] pdf = new ServiceReport(PresentHomes.study(id), dealer, DemoTown.DAY).toPdf();

    assertThat(TextBoxes.of(pdf).pages()).isEqualTo(2);
  }

  @ParameterizedTest
  @MethodSource(CASES)
  void everyFaultAndAssumptionStandsInItAndTheGravestFaultFirst(String id, String tag) {
    ServiceStudy study = PresentHomes.study(id);
    Wording words = DemoTown.words(DemoTown.dealer(tag));
    String text = text(id, words);

    int from = 0;
    for (Fault fault : study.faults()) {
      String said = plain(words.fault(fault));
      assertThat(text.substring(from)).contains(said);
      from = text.indexOf(said, from) + said.length();
    }
    for (Assumption assumed : study.assumptions()) {
      String standing = words.term(assumed.kind().source().standing());
      assertThat(text).contains(plain(words.assumption(assumed) + " [" + standing + "]"));
    }
  }

  @ParameterizedTest
  @MethodSource(CASES)
  void itAdvisesAndPromisesNothing(String id, String tag) {
    Wording words = DemoTown.words(DemoTown.dealer(tag));
    ServiceStudy study = PresentHomes.study(id);
    String text = text(id, words);

    assertThat(text)
        .contains(plain(ExpectedService.advice(study, words)))
        .contains(plain(words.text("service.promise")))
        .contains(plain(words.caution(Caution.LOCAL_RULES)))
        .contains(plain(words.caution(Caution.NOT_A_PURIFIER)))
        .contains(plain(words.caution(Caution.SODIUM)));
    assertThat(text.contains(plain(words.caution(Caution.POTASSIUM))))
        .isEqualTo(study.present().regenerant() == Regenerant.POTASSIUM_CHLORIDE);
  }

  /** Numbers of the English report, which are looked up one by one. */
  @ParameterizedTest
  @MethodSource("io.github.brinewright.documents.PresentHomes#ids")
  void itsNumbersAreTheSameInEveryLanguage(String id) throws IOException {
    ServiceStudy study = PresentHomes.study(id);
    List<?> english = numbers(study, Locale.US);

    assertThat(english).hasSizeGreaterThan(40);
    assertThat(numbers(study, Locale.forLanguageTag("es-US"))).isEqualTo(english);
    assertThat(numbers(study, Locale.CANADA_FRENCH)).isEqualTo(english);
  }

  private static List<?> numbers(ServiceStudy study, Locale locale) throws IOException {
    Dealer dealer = DemoTown.JOB.dealer().writing(locale);
    byte[] pdf = new ServiceReport(study, dealer, DemoTown.DAY).toPdf();
    return SameNumbersTest.numbers(pdf, locale, study.comparison());
  }

  @Test
  void whereNothingIsWrongItSaysSo() {
    assertThat(PresentHomes.study(PresentHomes.RIGHT).faults()).isEmpty();
    assertThat(text(PresentHomes.RIGHT))
        .contains("Nothing is wrong", "Leave it as it is", "We advise: as found")
        .doesNotContain("What is wrong", "Set right means");
  }

  @Test
  void whereSettingRightCostsMoreItSaysSoAndWhy() {
    ServiceStudy study = PresentHomes.study(PresentHomes.CLOCK_FROM_RATING);
    ServiceOption right = study.option(Kind.SET_RIGHT).orElseThrow();

    assertThat(right.cost().isGreaterThan(study.asFound().cost())).isTrue();
    assertThat(text(PresentHomes.CLOCK_FROM_RATING))
        .contains("A year then costs about $", "more: until now part of the water came hard")
        .doesNotContain("That saves about");
  }

  @Test
  void whereSettingRightSavesItSaysHowSoonTheVisitIsEarnedBack() {
    assertThat(text(PresentHomes.SALT_HUNGRY))
        .contains("That saves about $", "The visit costs $95.00; time until that is earned back:")
        .doesNotContain("more: until now");
  }

  @Test
  void anHourAloneIsSetWithoutOtherSettings() {
    ServiceStudy study = PresentHomes.study(PresentHomes.WRONG_HOUR);

    assertThat(study.faults()).extracting(Fault::kind).containsExactly(FaultKind.HOUR_IN_USE);
    assertThat(text(PresentHomes.WRONG_HOUR))
        .contains("It regenerates at 11:00 a.m.", "Make 2:00 a.m. its hour of regeneration.")
        .contains("Hour of the regeneration | 11:00 a.m. | 2:00 a.m.");
  }

  @Test
  void whereSettingsAreRightItAsksToLookElsewhere() {
    assertThat(PresentHomes.study(PresentHomes.LEAK).faults())
        .extracting(Fault::kind)
        .containsExactly(FaultKind.SALT_BOUGHT_ABOVE);
    assertThat(text(PresentHomes.LEAK))
        .contains("The family buys about 2,400 lb", "Look into what is named above")
        .doesNotContain("Set right means", "set it right", "set right:");
  }

  @Test
  void whatReadingsShowedIsToldWithHowSureItIs() {
    DailyUse use = PresentHomes.study(PresentHomes.READ).comparison().home().use();
    double likely = use.expected().gallons();
    double strays = use.likely().uncertain().coefficient();

    assertThat(strays).isLessThan(0.2);
    assertThat(text(PresentHomes.READ))
        .contains("Readings of the past months put the use at " + gallons(likely))
        .contains("lies between " + gallons(likely * use.likely().highMean(0.05)) + " and ")
        .contains(" and " + gallons(likely * use.likely().highMean(0.95)) + ".");
    assertThat(text(PresentHomes.RIGHT))
        .contains("How much water the home uses comes from typical homes of this size.")
        .doesNotContain("Readings", "is bought puts");
  }

  private static String gallons(double gallons) {
    return ENGLISH.figure(Figure.roughly(Volume.ofGallons(gallons)));
  }

  @Test
  void readingsThatAreLeftOutAndOtherTellingsAreNamed() {
    assertThat(text(PresentHomes.READ_SHORTLY))
        .contains("The readings of the meter cover less than 7 days and are left out.");
    assertThat(text(PresentHomes.STATED)).contains("The use is known: 195 gal on a day at home");
    assertThat(text(PresentHomes.SALT_TELLS)).contains("The salt that is bought puts the use at");
  }

  @Test
  void aMeterIsNotOfferedToOneThatHasIt() {
    assertThat(text(PresentHomes.WITHOUT_IRON)).doesNotContain("with a meter");
    assertThat(text(PresentHomes.SALT_HUNGRY)).contains("with a meter");
  }

  @Test
  void whereNoSettingServesItSaysSo() {
    ServiceStudy study = PresentHomes.study(PresentHomes.EVERYTHING);

    assertThat(study.faults()).hasSizeGreaterThan(4);
    assertThat(study.advice()).isEqualTo(Advice.REPLACE);
    assertThat(text(PresentHomes.EVERYTHING))
        .contains("No setting of this bed serves the home. Ask us for a unit that does.")
        .contains("Treat the water first: read “What no setting mends”.");
  }

  @Test
  void pricesThatAreNotStatedAreNotMadeUp() {
    assertThat(text("vessel alone, unpriced"))
        .contains("not stated")
        .doesNotContain("The visit costs", "The meter costs");
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "es-US", "fr-CA"})
  void namesAsLongAsTheyComeAreNotCut(String tag) throws Exception {
    String name = "Wasserenthaertungsanlagenbesitzergemeinschaft".repeat(2);
    Dealer dealer =
        DemoTown.dealer(tag).change().name(name).contact(List.of(name, name, name)).build();
    byte[] pdf =
        new ServiceReport(PresentHomes.study(PresentHomes.EVERYTHING), dealer, DemoTown.DAY)
            .toPdf();

    assertThat(TextBoxes.of(pdf).overlaps()).isEmpty();
    assertThat(TextBoxes.of(pdf).outsideTheMargins()).isEmpty();
    assertThat(StandardsTest.failures(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
  }
}
