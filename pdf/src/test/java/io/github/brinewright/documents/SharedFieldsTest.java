package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.model.Field;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Ticks;
import io.github.brinewright.proposal.Proposal;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.form.PDCheckBox;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.apache.pdfbox.pdmodel.interactive.form.PDRadioButton;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** What is ticked or marked at one place of a document shows at the others. */
class SharedFieldsTest {
  private static final List<String> PACKAGES = List.of("small", "middle", "large");

  @BeforeAll
  static void start() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private static Field tick(String where) {
    return Field.of(Field.Kind.TICK, "extra_alarm", Phrase.plain("Leak alarm, " + where));
  }

  private static Field mark(String name, String where) {
    return Field.oneOf("package", Phrase.plain("The " + name + " one, " + where), name);
  }

  private static Section choices() {
    List<Table.Column> columns =
        PACKAGES.stream()
            .map(
                name ->
                    new Table.Column(name, Phrase.plain("The " + name), Table.Kind.VALUES)
                        .with(mark(name, "choices")))
            .toList();
    List<Phrase> cells = PACKAGES.stream().<Phrase>map(Phrase::plain).toList();
    Table table =
        new Table(
            "own.choices",
            Phrase.plain("What you choose"),
            columns,
            List.of(
                Table.Line.of("own.price", Phrase.plain("Price"), cells),
                Table.Line.of("own.alarm", Phrase.plain("Leak alarm"), cells)
                    .with(tick("choices"))));
    return Section.of("own.choices", Phrase.plain("Choose"), table);
  }

  private static Section acceptance() {
    List<Field> fields = new ArrayList<>();
    PACKAGES.forEach(name -> fields.add(mark(name, "acceptance")));
    fields.add(tick("acceptance"));
    return Section.of("own.accept", Phrase.plain("Accept"), new Ticks(fields));
  }

  private static byte[] pdf() {
    return new Proposal(DemoTown.compare("H01"), DemoTown.JOB.dealer(), DemoTown.DAY)
        .withSections(all -> List.of(all.get(0), choices(), acceptance()))
        .toPdf();
  }

  private static List<String> states(PDField field) {
    return field.getWidgets().stream()
        .map(widget -> widget.getAppearanceState().getName())
        .toList();
  }

  @Test
  void whatIsTickedAtOnePlaceShowsAtTheOther() throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf())) {
      PDCheckBox tick =
          (PDCheckBox) document.getDocumentCatalog().getAcroForm(null).getField("extra_alarm");

      assertThat(states(tick)).containsExactly("Off", "Off");
      tick.check();
      assertThat(states(tick)).containsExactly("Yes", "Yes");
    }
  }

  @Test
  void whatIsMarkedAtOnePlaceShowsAtTheOtherAndTheOthersAreNot() throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf())) {
      PDRadioButton choice =
          (PDRadioButton) document.getDocumentCatalog().getAcroForm(null).getField("package");

      assertThat(choice.isRadiosInUnison()).isTrue();
      assertThat(choice.getOnValues()).containsExactlyInAnyOrderElementsOf(PACKAGES);
      choice.setValue("middle");
      assertThat(states(choice)).containsExactly("Off", "middle", "Off", "Off", "middle", "Off");
      ByteArrayOutputStream saved = new ByteArrayOutputStream();
      document.save(saved);
      try (PDDocument again = Loader.loadPDF(saved.toByteArray())) {
        assertThat(
                again.getDocumentCatalog().getAcroForm(null).getField("package").getValueAsString())
            .isEqualTo("middle");
      }
    }
  }

  @Test
  void eachPlaceSaysWhatItIsFor() throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf())) {
      PDField choice = document.getDocumentCatalog().getAcroForm(null).getField("package");
      List<String> said =
          choice.getWidgets().stream()
              .map(PDAnnotationWidget::getCOSObject)
              .map(widget -> widget.getString(COSName.CONTENTS))
              .toList();

      assertThat(said).contains("The small one, choices", "The large one, acceptance");
      assertThat(said).doesNotHaveDuplicates().hasSize(6);
    }
  }

  @Test
  void suchDocumentsKeepTheStandards() throws Exception {
    byte[] pdf = pdf();

    assertThat(StandardsTest.failures(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(StandardsTest.failures(pdf, PDFAFlavour.PDFA_3_A)).isEmpty();
    assertThat(TextBoxes.of(pdf).overlaps()).isEmpty();
    assertThat(ReadAloud.of(pdf).outOfOrder()).isEmpty();
  }

  @Test
  void twoKindsOfFieldDoNotShareAName() {
    Field text = Field.of(Field.Kind.TICK, "package", Phrase.plain("A tick"));
    Proposal wrong =
        new Proposal(DemoTown.compare("H01"), DemoTown.JOB.dealer(), DemoTown.DAY)
            .withSections(
                all ->
                    List.of(
                        choices(),
                        Section.of("own.x", Phrase.plain("X"), new Ticks(List.of(text)))));

    assertThatThrownBy(wrong::toPdf).hasMessageContaining("two fields are named \"package\"");
  }
}
