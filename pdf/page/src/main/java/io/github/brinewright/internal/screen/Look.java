package io.github.brinewright.internal.screen;

import io.github.brinewright.internal.visit.Asked;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Languages;
import io.github.brinewright.proposal.ChartSvg;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.Locale;

/**
 * How a page is read: language, units and colour.
 *
 * @param words of that language, in these units
 * @param system these units
 * @param accent the dealer's colour
 */
public record Look(Wording words, UnitSystem system, String accent) {
  /** As the page asks, and as the dealer writes where it does not. */
  public static Look of(Asked asked, Dealer dealer) {
    UnitSystem system = units(asked, dealer.units());
    return new Look(
        PageTexts.words(locale(asked, dealer.locale()), system), system, dealer.accent());
  }

  private static UnitSystem units(Asked asked, UnitSystem dealers) {
    return asked.units(dealers == UnitSystem.METRIC ? UnitSystem.METRIC : UnitSystem.US);
  }

  private static Locale locale(Asked asked, Locale dealers) {
    String code = asked.language();
    return dealers.getLanguage().equals(code)
        ? dealers
        : Languages.USUAL.stream()
            .filter(each -> each.getLanguage().equals(code))
            .findFirst()
            .orElse(dealers);
  }

  Pieces pieces() {
    return new Pieces(words, new ChartSvg(words, accent));
  }

  String text(String key) {
    return words.text(key);
  }
}
