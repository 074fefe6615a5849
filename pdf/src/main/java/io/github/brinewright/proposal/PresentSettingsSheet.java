package io.github.brinewright.proposal;

import io.github.brinewright.internal.layout.Pages;
import io.github.brinewright.internal.section.PresentSections;
import io.github.brinewright.internal.section.SheetHead;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Document;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.sizing.ControlOptions;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;

/**
 * The sheet by which the softener that is already in a house is set right, or set under a meter:
 * what is to be set beside what it is set to now. Where it is right as it is, the sheet says what
 * it is set to.
 *
 * @param study of the softener
 * @param kind {@link ServiceOption.Kind#SET_RIGHT} or {@link ServiceOption.Kind#METERED}; one of
 *     the study's
 * @param dealer who sets it
 * @param date of the sheet
 * @param options hour of the regeneration, the day on which it is set, and how a meter takes the
 *     reserve
 */
public record PresentSettingsSheet(
    ServiceStudy study,
    ServiceOption.Kind kind,
    Dealer dealer,
    LocalDate date,
    ControlOptions options) {
  /**
   * @param study of the softener
   * @param kind set right, or with a meter
   * @param dealer who sets it
   * @param date of the sheet
   * @param options hour, day and form of the reserve
   * @throws IllegalArgumentException when the kind is another one, or no setting of the bed serves
   *     the home
   */
  public PresentSettingsSheet {
    if (study.option(requireSet(kind)).isEmpty()) {
      throw new IllegalArgumentException("no setting of the present softener serves the home");
    }
  }

  static ServiceOption.Kind requireSet(ServiceOption.Kind kind) {
    if (kind != ServiceOption.Kind.SET_RIGHT && kind != ServiceOption.Kind.METERED) {
      throw new IllegalArgumentException(
          "a present softener is set right or set with a meter, but the kind is " + kind);
    }
    return kind;
  }

  /** {@return what the sheet says, in no language yet} */
  public Document model() {
    ServiceOption option = study.option(kind).orElseThrow();
    boolean fitted = !study.found().control().metered() && kind == ServiceOption.Kind.METERED;
    return new SheetHead(dealer, date)
        .document(
            SheetHead.Name.present(fitted),
            study.comparison(),
            new PresentSections(study, option, options).sections());
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
