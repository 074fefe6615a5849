package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.internal.section.ControlSettings;
import io.github.brinewright.internal.section.Kit;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The sheet by which an installer sets up one candidate, as PDF. It is written in the dealer's
 * language even where the home names another, because the installer reads it.
 *
 * @param comparison the home with its candidates
 * @param candidate the one to set up
 * @param dealer who installs it, in whose language it is
 * @param date of the sheet
 */
public record SettingsSheet(
    Comparison comparison, Candidate candidate, Dealer dealer, LocalDate date) {
  /** The PDF file. */
  public byte[] toPdf() {
    Wording words = PdfPages.words(dealer);
    Kit kit = new Kit(comparison, Optional.empty(), dealer, words, date);
    String title =
        words.text(
            "settings.title",
            Figure.of(candidate.softener().name()),
            Figure.of(comparison.home().site().contact().name()));
    ControlSettings settings = new ControlSettings(kit, candidate);
    return new PdfPages(kit, title).write(List.of(settings.block(), settings.startUp()), null);
  }
}
