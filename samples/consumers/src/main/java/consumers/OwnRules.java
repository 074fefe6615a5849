package consumers;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.DesignRule;
import io.github.brinewright.finding.Limits;
import io.github.brinewright.finding.OwnRule;
import io.github.brinewright.finding.Rule;
import io.github.brinewright.finding.RuleBook;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** A rule of one's own with its words, a rule taken more gravely, a limit of one's own. */
final class OwnRules implements Consumer {
  private static final Rule<HomeLoad> TIGHT_CELLAR =
      OwnRule.of(
              "tight-cellar",
              (HomeLoad home) -> {
                int people = home.site().household().people();
                return Rule.when(people > 2, Figure.of(people));
              })
          .severity(Severity.CAUTION)
          .words(Locale.ENGLISH, "Homes of {0} here have tight cellars: measure the door.")
          .words(Locale.FRENCH, "Ici, à {0}, la cave est étroite : mesurer la porte.")
          .build();

  @Override
  public String run(Path out) throws Exception {
    RuleBook rules =
        RuleBook.builder()
            .home(TIGHT_CELLAR)
            .severity(DesignRule.BED_SHALLOW, Severity.STOP)
            .build();
    Limits strict = Limits.builder().leastBedDepth(Length.ofInches(60)).build();
    PriceList usual = OwnStock.prices();
    PriceList own = usual.toBuilder().rules(rules).limits(strict).build();
    Comparison before = usual.compare(Homes.one(), Homes.tariff());
    Comparison after = own.compare(Homes.one(), Homes.tariff());
    Consumer.require(before.recommended().isPresent(), "by the usual rules a unit serves");
    Consumer.require(after.recommended().isEmpty(), "no bed is 60 inches deep");
    Dealer french = Dealer.UNNAMED.writing(Locale.CANADA_FRENCH);
    Files.write(out.resolve("own-rule.pdf"), new Proposal(after, french, Homes.DAY).toPdf());
    Wording words = Wording.of(Locale.US, UnitSystem.US);
    return words.finding(after.homeFinding(TIGHT_CELLAR).orElseThrow());
  }
}
