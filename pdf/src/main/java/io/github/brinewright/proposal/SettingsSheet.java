package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Option;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.section.ControlSettings;
import io.github.brinewright.section.Kit;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The sheet by which an installer sets up one option, as PDF.
 *
 * @param comparison the home with its options
 * @param option the one to set up
 * @param dealer who installs it
 * @param date of the sheet
 */
public record SettingsSheet(Comparison comparison, Option option, Dealer dealer, LocalDate date) {
  /** The PDF file. */
  public byte[] toPdf() {
    Wording words = PdfPages.words(dealer);
    Kit kit = new Kit(comparison, Optional.empty(), dealer, words, date);
    String title =
        words.text(
            "settings.title",
            Figure.of(option.unit().name()),
            Figure.of(comparison.home().site().contact().name()));
    ControlSettings settings = new ControlSettings(kit, option);
    return new PdfPages(kit, title)
        .write(List.of(settings.block(), settings.startUp()), Optional.empty());
  }
}
