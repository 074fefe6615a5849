package consumers;

import io.github.brinewright.job.Dealer;
import io.github.brinewright.proposal.DocumentTexts;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.words.Texts;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/**
 * A document in a language that the library does not bring. This one is German in some sentences;
 * the other texts are the English ones with each e made an ë, so that one left out would show.
 */
final class GermanProposal implements Consumer {
  private static final Map<String, String> GERMAN =
      Map.of(
          "title", "Angebot für weiches Wasser: {0}",
          "valid", "Gültig bis {0}",
          "page", "Seite {0} von {1}",
          "opening.heading", "Weiches Wasser: {0}",
          "opening.recommend", "Wir empfehlen",
          "unit.day.one", "{0} Tag",
          "unit.day.other", "{0} Tage",
          "term.Control.METERED_AT_NIGHT", "Zähler, nachts");

  private static Map<String, String> texts() {
    Map<String, String> texts = new HashMap<>(Texts.library().in(Locale.US));
    texts.putAll(DocumentTexts.ours().in(Locale.US));
    texts.replaceAll((key, english) -> english.replace('e', 'ë'));
    texts.putAll(GERMAN);
    return texts;
  }

  private static Wording words(Map<String, String> texts) {
    return DocumentTexts.words(Locale.GERMANY, UnitSystem.METRIC, Texts.of(Locale.GERMAN, texts));
  }

  @Override
  public String run(Path out) throws Exception {
    var comparison = OwnStock.prices().compare(Homes.one(), Homes.tariff());
    Dealer dealer = Dealer.UNNAMED.writing(Locale.GERMANY, Dealer.Paper.A4, UnitSystem.METRIC);
    byte[] pdf = new Proposal(comparison, dealer, Homes.DAY).toPdf(words(texts()));
    Files.write(out.resolve("german.pdf"), pdf);
    Map<String, String> gap = texts();
    gap.remove("opening.recommend");
    try {
      words(gap);
      throw new IllegalStateException("not so: a missing text is refused before anything is made");
    } catch (IllegalArgumentException refused) {
      return refused.getMessage();
    }
  }
}
