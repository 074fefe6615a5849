package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.internal.layout.Pages;
import io.github.brinewright.internal.section.SettingsSections;
import io.github.brinewright.internal.section.SheetHead;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Document;
import io.github.brinewright.sizing.ControlOptions;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;

/**
 * The sheet by which an installer sets up one candidate, as PDF: one for clocks, another for
 * meters. Two pages, unless much is to be said of the home.
 *
 * <pre>{@code
 * ControlOptions options = ControlOptions.on(date).at(3).with(ReserveForm.SEPARATE);
 * byte[] pdf = new SettingsSheet(comparison, candidate, dealer, date, options).toPdf();
 * }</pre>
 *
 * @param comparison the home with its candidates
 * @param candidate the one to set up
 * @param dealer who installs it
 * @param date of the sheet
 * @param options hour of the regeneration, the day on which it is set, and how a meter takes the
 *     reserve
 * @param listed whether the softener is in a price list; one that is not is named by its capacity
 */
public record SettingsSheet(
    Comparison comparison,
    Candidate candidate,
    Dealer dealer,
    LocalDate date,
    ControlOptions options,
    boolean listed) {
  /**
   * A sheet of a softener from a price list.
   *
   * @param comparison the home with its candidates
   * @param candidate the one to set up
   * @param dealer who installs it
   * @param date of the sheet
   * @param options hour, day and form of the reserve
   */
  public SettingsSheet(
      Comparison comparison,
      Candidate candidate,
      Dealer dealer,
      LocalDate date,
      ControlOptions options) {
    this(comparison, candidate, dealer, date, options, true);
  }

  /**
   * A sheet of a softener that is set on its date, regenerates at 2 a.m. and has the reserve
   * deducted already.
   *
   * @param comparison the home with its candidates
   * @param candidate the one to set up
   * @param dealer who installs it
   * @param date of the sheet
   */
  public SettingsSheet(Comparison comparison, Candidate candidate, Dealer dealer, LocalDate date) {
    this(comparison, candidate, dealer, date, ControlOptions.on(date));
  }

  /** {@return the same of a softener that is in no price list} */
  public SettingsSheet unlisted() {
    return new SettingsSheet(comparison, candidate, dealer, date, options, false);
  }

  /** {@return what the sheet says, in no language yet} */
  public Document model() {
    return new SheetHead(dealer, date)
        .document(
            listed
                ? SheetHead.Name.listed(candidate.softener())
                : SheetHead.Name.unlisted(candidate.softener()),
            comparison,
            new SettingsSections(comparison, candidate, options).sections());
  }

  /** {@return the PDF file} */
  public byte[] toPdf() {
    return toPdf(PdfPages.words(dealer));
  }

  /**
   * {@return the PDF file in other words than the library's own}
   *
   * @param words of {@link DocumentTexts#words}
   */
  public byte[] toPdf(Wording words) {
    return new Pages(dealer, words, date).write(model(), null);
  }
}
