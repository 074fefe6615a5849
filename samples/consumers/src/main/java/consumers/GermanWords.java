package consumers;

import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Texts;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** A language that the library does not bring; this one is German in a few words alone. */
final class GermanWords implements Consumer {
  @Override
  public String run(Path out) {
    Map<String, String> texts = new HashMap<>(Texts.library().in(Locale.US));
    texts.put("unit.day.one", "{0} Tag");
    texts.put("unit.day.other", "{0} Tage");
    Texts german = Texts.of(Locale.GERMAN, texts);
    Wording words = Wording.of(Locale.GERMANY, UnitSystem.METRIC, german);
    try {
      Wording.of(Locale.GERMANY, UnitSystem.METRIC);
      throw new IllegalStateException("German without texts was not refused");
    } catch (IllegalArgumentException refused) {
      return words.figure(Figure.days(1, 0)) + ", " + words.figure(Figure.days(1.5, 1));
    }
  }
}
