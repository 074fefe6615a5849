package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Document;
import io.github.brinewright.proposal.PresentSettingsSheet;
import io.github.brinewright.proposal.ServiceReport;
import io.github.brinewright.proposal.SettingsSheet;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.sizing.ControlOptions;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A document speaks in the units of its dealer. Left out are what the dealer typed (names of units
 * and tariffs), citations, and the steps of a calculation, whose formulas are published in US units
 * and which say so. What a valve is set to is in brackets in its own US units besides.
 */
class OneSystemOfUnitsTest {
  /** Units of one system, by symbol and by name in each language. */
  private static final Pattern US =
      Pattern.compile(
          "(?i)\\b(lbs?|libras?|livres?|pounds?|oz|ounces?|onzas|onces|ft[²³]?|pi³|pies|pieds"
              + "|feet|foot|gal|gpm|gpg|gallons?|galones|gal[oó]n|grains?|granos?|psi|inch(es)?"
              + "|pulgadas?|pouces?|pi|po|fahrenheit)\\b|ft[²³]|pi³|°F|\\d in(?=[.,;)]|$| (high|wide|of)\\b)");

  private static final Pattern METRIC =
      Pattern.compile(
          "\\d (L|kg|g|mm|cm|bar|kPa|m³|L/min|g/kg|g/L|eq/L|mm/s)(?![\\w/])|°C"
              + "|(?i)\\b(liters?|litres?|litros?|kilogram\\w*|kilogramo\\w*)\\b");

  /** What is drunk in a day is laid down in liters, also in the United States. */
  private static final String DRUNK =
      "2 (liters (in )?a day|litros al día|litros diarios|litres par jour)";

  /** The steps of a calculation. */
  private static final String STEPS = "(?s)\n## worked.*?(?=\n## |\\z)";

  /** A setting of a valve with US units, said in both. */
  private static final String BESIDES = "\\([\\d.,\\h]+ (gpg|grains|granos|gal|lb)\\)";

  static Stream<Arguments> homesAndLanguages() {
    return DemoTown.homesAndLanguages();
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void metricDocumentsNameNoUsUnit(String id, String tag) {
    assertThat(found(id, tag, UnitSystem.METRIC, US)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("homesAndLanguages")
  void usDocumentsNameNoMetricUnit(String id, String tag) {
    assertThat(found(id, tag, UnitSystem.US, METRIC)).isEmpty();
  }

  private static List<String> found(String id, String tag, UnitSystem system, Pattern foreign) {
    Dealer dealer =
        DemoTown.JOB.dealer().writing(Locale.forLanguageTag(tag), Dealer.Paper.LETTER, system);
    Wording words = DemoTown.words(dealer);
    String typed = dealer.terms();
    return documents(DemoTown.home(DemoTown.JOB, id), dealer).stream()
        .flatMap(document -> said(document, words, typed))
        .filter(line -> foreign.matcher(line).find())
        .toList();
  }

  private static List<Document> documents(DemoTown.Home home, Dealer dealer) {
    List<Document> documents = new ArrayList<>();
    documents.add(home.proposal(dealer).model());
    documents.add(home.page(dealer).model());
    home.comparison().columns(3).stream()
        .filter(each -> each.design().feasible())
        .forEach(
            each ->
                documents.add(
                    new SettingsSheet(home.comparison(), each, dealer, DemoTown.DAY).model()));
    ServiceStudy service = home.service();
    if (service != null) {
      documents.add(new ServiceReport(service, dealer, DemoTown.DAY, null).model());
      documents.addAll(sheets(service, dealer));
    }
    return documents;
  }

  private static List<Document> sheets(ServiceStudy service, Dealer dealer) {
    return Stream.of(Kind.SET_RIGHT, Kind.METERED)
        .filter(kind -> service.option(kind).isPresent())
        .map(
            kind ->
                new PresentSettingsSheet(
                    service, kind, dealer, DemoTown.DAY, ControlOptions.on(DemoTown.DAY)))
        .map(PresentSettingsSheet::model)
        .toList();
  }

  /** Without steps, citations, keys of lines, and names that the dealer gave. */
  private static Stream<String> said(Document document, Wording words, String typed) {
    String text = WholeText.of(document, words).replace(typed, "");
    return Stream.of(text.replaceAll(STEPS, "").replaceAll("\nchart: (.*)\n.*", "\n$1"))
        .flatMap(String::lines)
        .filter(line -> !line.startsWith("["))
        .map(line -> line.replaceAll("^[ =]*[\\w.-]+( ruled \\[.*?\\])?:", ""))
        .map(line -> line.replaceAll(BESIDES, "").replaceAll(DRUNK, ""));
  }
}
