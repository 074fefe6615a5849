package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.job.Dealer;
import io.github.brinewright.proposal.ServiceReport;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Reports on softeners that nobody thought of. */
class ServiceReportByChanceTest {
  private static final int HOMES = Integer.getInteger("brinewright.service.homes", 24);

  /** What no text may hold: figures without sense, places left empty, wrong counts, nothings. */
  private static final Pattern BAD =
      Pattern.compile(
          "NaN|Infinity|null|∞|[{}]|[^0-9 ]-\\d|\\.\\.|\\(\\)"
              + "|(?<![.,\\d])1 (days|días|jours|years|años|ans)\\b"
              + "|(about|environ|cerca de) 0 |(?<![.,\\d])0 (lb|kg|gal|L) (of|de|d')");

  static IntStream numbers() {
    return IntStream.range(0, HOMES);
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void aReportIsOfTwoPagesAndOfSoundFigures(int number) throws IOException {
    ServiceStudy study = RandomPresent.study(number);
    for (String tag : DemoTown.LANGUAGES) {
      Dealer dealer = DemoTown.dealer(tag);
      Wording words = DemoTown.words(dealer);
      ServiceReport report = new ServiceReport(study, dealer, DemoTown.DAY);
      TextBoxes boxes = TextBoxes.of(report.toPdf());

      LabelledValuesTest.check(report.model(), words, new ExpectedService(study, words));
      assertThat(WholeText.of(report.model(), words)).doesNotContainPattern(BAD);
      assertThat(boxes.pages()).as(study.faults().toString()).isEqualTo(2);
      assertThat(boxes.overlaps()).isEmpty();
      assertThat(boxes.outsideTheMargins()).isEmpty();
    }
  }
}
