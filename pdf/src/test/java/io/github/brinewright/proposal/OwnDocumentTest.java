package io.github.brinewright.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** A document of an embedder's own has his head, day and sections, in his language. */
class OwnDocumentTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 2);
  private static final Dealer DEALER =
      Dealer.named("Invented works").locale(Locale.CANADA_FRENCH).build();

  private static Section section(String key) {
    return Section.of(key, Phrase.plain("Own"), Paragraph.of(Phrase.plain("Said by " + key)));
  }

  @Test
  void says_what_it_is_given() throws IOException {
    OwnDocument own =
        OwnDocument.report(Phrase.plain("Our town"), DEALER, DAY, List.of(section("own.one")));
    try (PDDocument document = Loader.loadPDF(own.toPdf())) {
      assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Our town");
      assertThat(new PDFTextStripper().getText(document))
          .contains("Invented works", "Our town", "2 novembre 2026", "Said by own.one");
    }
    assertThat(own.toPdf()).isEqualTo(own.toPdf());
  }

  @Test
  void two_sections_of_one_key_are_refused() {
    List<Section> alike = List.of(section("own.one"), section("own.one"));
    assertThatThrownBy(() -> OwnDocument.report(Phrase.plain("Our town"), DEALER, DAY, alike))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("own.one");
  }
}
