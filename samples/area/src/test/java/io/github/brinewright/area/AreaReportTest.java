package io.github.brinewright.area;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.job.Dealer;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The report says what the sums are, on two pages in every language. */
class AreaReportTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 2);
  private static final Assumed ASSUMED = new Assumed(7, 4, 3);
  private static final List<Locale> LOCALES =
      List.of(Locale.US, Locale.forLanguageTag("es-US"), Locale.CANADA_FRENCH);
  private static final Town TOWN = new AreaStudy(ASSUMED).of(new InventedTown(5).rows(0, 200));

  private static byte[] pdf(Town town, Locale locale, boolean metric) {
    Dealer dealer = Dealer.named("Noughtmarl (invented)").locale(locale).build();
    return new AreaReport(town, ASSUMED, true, metric).toPdf(dealer, DAY);
  }

  private static String text(byte[] pdf, int pages) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isEqualTo(pages);
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void two_pages_in_every_language_and_both_systems() throws IOException {
    for (Locale locale : LOCALES) {
      for (boolean metric : new boolean[] {false, true}) {
        byte[] pdf = pdf(TOWN, locale, metric);
        assertThat(text(pdf, 2)).doesNotContain("area.");
        assertThat(pdf).isEqualTo(pdf(TOWN, locale, metric));
      }
    }
  }

  @Test
  void what_it_must_say_stands_in_it() throws IOException {
    assertThat(text(pdf(TOWN, Locale.US, false), 2))
        .contains("These homes are invented")
        .contains("An estimate with the assumptions below, and no promise")
        .contains("local law decides")
        .contains("Looked at: 200 homes");
  }

  /** A tonne is 10^9 mg, a ton 2,000 lb of 453.59237 g (exact, NIST Handbook 44). */
  @Test
  void the_salt_is_printed_as_it_was_summed() throws IOException {
    Town one = new Town(0);
    long[] amounts = new long[Measure.values().length];
    amounts[Measure.SALT_MG.ordinal()] = 90_718_474_000L * 3;
    one.district("North").add(0, Scenario.AS_FOUND, amounts);
    assertThat(text(pdf(one, Locale.US, false), 2)).contains("300 salt a year, tons of 2,000 lb");
    assertThat(text(pdf(one, Locale.US, true), 2)).contains("270 salt a year, tonnes");
  }

  @Test
  void many_districts_do_not_ask_for_a_third_page() throws IOException {
    Town many = new Town(4);
    for (int i = 0; i < 40; i++) {
      many.district("A district of some length, number " + i).count(Totals.Count.SOFTENERS);
    }
    assertThat(text(pdf(many, Locale.CANADA_FRENCH, true), 2)).contains(", 32.");
  }

  @Test
  void every_language_has_every_text() {
    for (Locale locale : LOCALES) {
      assertThat(AreaReport.TEXTS.in(locale).keySet())
          .isEqualTo(AreaReport.TEXTS.in(Locale.US).keySet());
    }
  }
}
