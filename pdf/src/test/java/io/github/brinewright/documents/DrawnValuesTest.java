package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Document;
import io.github.brinewright.proposal.ComparisonPage;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.proposal.SettingsSheet;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the model says at a label stands beside it on the page. */
class DrawnValuesTest {
  static void check(Document model, byte[] pdf, Wording words, int least) throws IOException {
    String aloud =
        ReadAloud.of(pdf).said().stream()
            .map(said -> bare(said.text()))
            .collect(Collectors.joining("|", "|", "|"));
    List<List<String>> rows = new Labelled(model, words).drawn();
    assertThat(rows).hasSizeGreaterThanOrEqualTo(least);
    for (List<String> row : rows) {
      String together =
          row.stream()
              .map(DrawnValuesTest::bare)
              .filter(text -> !text.isEmpty())
              .collect(Collectors.joining("|", "|", "|"));
      assertThat(aloud).contains(together);
    }
  }

  /** Without spaces, so that line breaks do not matter. */
  private static String bare(String text) {
    return text.replaceAll("[\\s\u00A0\u202F]+", "");
  }

  @ParameterizedTest
  @MethodSource("io.github.brinewright.documents.DemoTown#homesAndLanguages")
  void everyLabelledValueIsDrawnBesideItsLabel(String id, String tag) throws IOException {
    Comparison comparison = DemoTown.compare(id);
    Dealer dealer = DemoTown.dealer(tag);
    Wording words = DemoTown.words(dealer);
    DemoTown.Home home = DemoTown.home(DemoTown.JOB, id);
    Proposal proposal = home.proposal(dealer);
    SettingsSheet sheet = new SettingsSheet(comparison, comparison.closest(), dealer, DemoTown.DAY);
    ComparisonPage page = home.page(dealer);

    boolean options = comparison.verdict().permitsRecommendation();
    check(proposal.model(), proposal.toPdf(), words, 6);
    check(sheet.model(), sheet.toPdf(), words, 6);
    check(page.model(), page.toPdf(), words, options ? 6 : 0);
  }
}
