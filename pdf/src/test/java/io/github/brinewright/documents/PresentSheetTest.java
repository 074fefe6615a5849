package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Document;
import io.github.brinewright.proposal.PresentSettingsSheet;
import io.github.brinewright.regeneration.ReserveForm;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.sizing.AssumptionKind;
import io.github.brinewright.sizing.ControlOptions;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The sheet by which the softener that is already in a house is set. */
class PresentSheetTest {
  private static final ControlOptions USUAL = ControlOptions.on(DemoTown.DAY);
  private static final List<ControlOptions> OPTIONS =
      List.of(USUAL, USUAL.at(23).with(ReserveForm.SEPARATE));

  @BeforeAll
  static void start() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private static PresentSettingsSheet sheet(ServiceStudy study, Kind kind, Dealer dealer) {
    return new PresentSettingsSheet(study, kind, dealer, DemoTown.DAY, USUAL);
  }

  /** Set right and with a meter, as far as a setting serves the home. */
  private static List<PresentSettingsSheet> sheets(String id, Dealer dealer) {
    ServiceStudy study = PresentHomes.study(id);
    List<PresentSettingsSheet> all = new ArrayList<>();
    for (Kind kind : List.of(Kind.SET_RIGHT, Kind.METERED)) {
      for (ControlOptions options : OPTIONS) {
        study
            .option(kind)
            .map(one -> new PresentSettingsSheet(study, kind, dealer, DemoTown.DAY, options))
            .ifPresent(all::add);
      }
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("io.github.brinewright.documents.PresentHomes#idsAndLanguages")
  void whatIsToBeSetStandsBesideWhatIsSet(String id, String tag) {
    Dealer dealer = DemoTown.dealer(tag);
    Wording words = DemoTown.words(dealer);
    for (PresentSettingsSheet sheet : sheets(id, dealer)) {
      Labelled said = new Labelled(sheet.model(), words);
      Expected expected = expected(sheet, words);
      assertThat(said.values()).containsExactlyInAnyOrderEntriesOf(expected.values());
      assertThat(said.labels()).containsAllEntriesOf(expected.labels());
    }
  }

  private static Expected expected(PresentSettingsSheet sheet, Wording words) {
    ServiceOption option = sheet.study().option(sheet.kind()).orElseThrow();
    Optional<Candidate> candidate = option.candidate();
    return candidate.isPresent()
        ? new ExpectedPresentSheet(sheet.study(), candidate.get(), sheet.options(), words)
        : new ExpectedFoundSheet(sheet.study(), sheet.options(), words);
  }

  @ParameterizedTest
  @MethodSource("io.github.brinewright.documents.PresentHomes#idsAndLanguages")
  void twoPagesHoldIt(String id, String tag) throws IOException {
    for (PresentSettingsSheet sheet : sheets(id, DemoTown.dealer(tag))) {
      TextBoxes boxes = TextBoxes.of(sheet.toPdf());
      assertThat(boxes.pages()).isLessThanOrEqualTo(2);
      assertThat(boxes.overlaps()).isEmpty();
      assertThat(boxes.outsideTheMargins()).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("io.github.brinewright.documents.PresentHomes#manyKinds")
  void itIsAccessibleAndFitForAnArchiveWithEachValueBesideItsLabel(String id, String tag)
      throws Exception {
    Dealer dealer = DemoTown.dealer(tag);
    for (PresentSettingsSheet sheet : sheets(id, dealer)) {
      byte[] pdf = sheet.toPdf();
      assertThat(StandardsTest.failures(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
      assertThat(StandardsTest.failures(pdf, PDFAFlavour.PDFA_3_A)).isEmpty();
      DrawnValuesTest.check(sheet.model(), pdf, DemoTown.words(dealer), 6);
    }
  }

  private static String text(String id, Kind kind) {
    Dealer dealer = DemoTown.dealer("en-US");
    Document model = sheet(PresentHomes.study(id), kind, dealer).model();
    return WholeText.of(model, DemoTown.words(dealer));
  }

  @Test
  void aSoftenerThatIsRightStaysAsItIs() {
    assertThat(text(PresentHomes.RIGHT, Kind.SET_RIGHT))
        .contains("It is set right for this home: it stays as it is.", "850 gal")
        .doesNotContain("Set to", "Enter the volume");
  }

  @Test
  void aMeterThatIsPutOnIsNamedAndCheckedToo() {
    assertThat(text(PresentHomes.CLOCK_FROM_RATING, Kind.METERED))
        .contains("the softener in the house, with a meter", "The meter is fitted")
        .contains("Enter the volume");
    assertThat(text(PresentHomes.CLOCK_FROM_RATING, Kind.SET_RIGHT))
        .doesNotContain("with a meter", "The meter", "Enter the volume");
  }

  @Test
  void itSaysWhatItTakesOfTheBedAndNothingOfSettingsThatAreGone() {
    ServiceStudy study = PresentHomes.study("weekdays and little known");
    Dealer dealer = DemoTown.dealer("en-US");
    Wording words = DemoTown.words(dealer);
    String text = WholeText.of(sheet(study, Kind.SET_RIGHT, dealer).model(), words);

    assertThat(text).contains(said(study, AssumptionKind.BED_FROM_RATING, words));
    assertThat(text).doesNotContain(said(study, AssumptionKind.SALT_NOT_KNOWN, words));
  }

  private static String said(ServiceStudy study, AssumptionKind kind, Wording words) {
    return study.assumptions().stream()
        .filter(each -> each.kind() == kind)
        .map(each -> plain(words.assumption(each)))
        .findFirst()
        .orElseThrow();
  }

  private static String plain(String text) {
    return text.replace('\u00A0', ' ').replace('\u202F', ' ');
  }

  @ParameterizedTest
  @EnumSource(names = {"AS_FOUND", "REPLACED"})
  void onlyThePresentSoftenerIsSet(Kind kind) {
    ServiceStudy study = PresentHomes.study(PresentHomes.SALT_HUNGRY);

    assertThatThrownBy(() -> sheet(study, kind, DemoTown.dealer("en-US")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(kind.name());
  }

  @Test
  void whereNoSettingServesTheHomeThereIsNoSheet() {
    ServiceStudy study = PresentHomes.study("too small for any clock");

    assertThat(study.option(Kind.SET_RIGHT)).isEmpty();
    assertThatThrownBy(() -> sheet(study, Kind.SET_RIGHT, DemoTown.dealer("en-US")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no setting of the present softener");
  }
}
