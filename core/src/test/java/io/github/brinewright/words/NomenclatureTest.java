package io.github.brinewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.GeneratedPage;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Symbol;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of terms, symbols and units, taken from what the code prints. */
class NomenclatureTest {
  private static final Path SOURCES = Path.of("src/main/java/io/github/brinewright");

  /** A letter that is put in a formula as a number is: beside a sign of arithmetic. */
  private static final Pattern LETTER = Pattern.compile("[×÷−(] ?(\\p{L})[²³]?(?= ?[×÷−)])");

  private final Wording words = Wording.of(Locale.US, UnitSystem.US);

  @Test
  void aPageOfTermsSymbolsAndUnitsIsKept() throws IOException {
    StringBuilder page =
        new StringBuilder("# Nomenclature\n\nWritten by the test run from the code.");
    page.append(" A term without a unit is a number.\n\n## Symbols\n\n");
    page.append("| term | symbol | unit | source |\n|---|---|---|---|\n");
    for (Symbol symbol : Symbol.values()) {
      String source = symbol.source().citation();
      page.append(row(words.term(symbol), symbol.sign(), symbol.unit(), source));
    }
    page.append("\n## Terms\n\nIn the order in which a proposal works them out.\n\n");
    page.append("| term | unit | source |\n|---|---|---|\n");
    terms().forEach((term, use) -> page.append(row(term, use.units(), use.sources())));
    page.append("\n## Quantities\n\n| quantity | US units | metric units |\n|---|---|---|\n");
    Map<Class<?>, UnitStyle> other = UnitStyle.all(UnitSystem.METRIC);
    UnitStyle.all(UnitSystem.US)
        .forEach((kind, style) -> page.append(row(name(kind), unit(style), unit(other.get(kind)))));
    GeneratedPage.keep("NOMENCLATURE.md", page.toString());
  }

  private static String row(String... cells) {
    return "| " + String.join(" | ", cells) + " |\n";
  }

  private static String name(Class<?> kind) {
    return kind.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
  }

  private static String unit(UnitStyle style) {
    return Texts.library().in(Locale.US).get("unit." + style.key()).replace("{0} ", "");
  }

  /** What was printed of a term: its units, and who states its formula. */
  private record Use(Set<String> unit, Set<String> source) {
    String units() {
      return String.join("; ", unit);
    }

    String sources() {
      return String.join("; ", source);
    }
  }

  private Map<String, Use> terms() {
    Map<StepKind, List<Step>> steps =
        PrintedStepsTest.comparisons().stream()
            .flatMap(comparison -> comparison.candidates().stream())
            .flatMap(candidate -> candidate.steps().stream())
            .collect(Collectors.groupingBy(Step::kind));
    Map<String, Use> terms = new LinkedHashMap<>();
    for (StepKind kind : StepKind.values()) {
      for (Step step : steps.get(kind)) {
        WorkedStep printed = words.step(step);
        Use use =
            terms.computeIfAbsent(
                printed.name(), name -> new Use(new LinkedHashSet<>(), new LinkedHashSet<>()));
        use.unit().add(unit(printed.result()));
        use.source().add(step.source().citation());
      }
    }
    return terms;
  }

  private static String unit(String result) {
    return result.startsWith("$")
        ? "currency of the prices"
        : result.replaceFirst("^[−\\d.,]+ ?", "").replaceFirst("^day$", "days");
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "es-US", "fr-CA"})
  void theLettersOfThePrintedFormulasAreDeclared(String tag) {
    Set<String> letters =
        Arrays.stream(StepKind.values())
            .map(kind -> formula(kind, Locale.forLanguageTag(tag)))
            .flatMap(formula -> LETTER.matcher(formula).results())
            .map(letter -> letter.group(1))
            .collect(Collectors.toSet());

    assertThat(letters).containsExactlyInAnyOrder("v", "e").isSubsetOf(signs());
  }

  private static Set<String> signs() {
    return Arrays.stream(Symbol.values()).map(Symbol::sign).collect(Collectors.toSet());
  }

  private static String formula(StepKind kind, Locale locale) {
    return Texts.library().in(locale).get("step." + kind + ".formula");
  }

  @ParameterizedTest
  @EnumSource
  void everySymbolStandsInAFormula(Symbol symbol) throws IOException {
    Pattern alone = Pattern.compile("(?<![\\p{L}'])" + Pattern.quote(symbol.sign()) + "(?!\\p{L})");
    List<String> texts = new ArrayList<>(documentation());
    texts.add(symbol.source().citation());

    assertThat(texts).anySatisfy(text -> assertThat(text).containsPattern(alone));
  }

  /** The lines of documentation that hold arithmetic. */
  private static List<String> documentation() throws IOException {
    List<String> lines = new ArrayList<>();
    for (String name : List.of("hydraulics", "cost")) {
      try (Stream<Path> files = Files.list(SOURCES.resolve(name))) {
        for (Path file : files.toList()) {
          Files.readString(file)
              .lines()
              .filter(line -> line.matches(" *(/\\*)?\\*.*[÷×^²³].*"))
              .forEach(lines::add);
        }
      }
    }
    return lines;
  }
}
