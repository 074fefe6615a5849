package io.github.brinewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A public formula says where it comes from and gives a worked example. A formula is a public
 * static method of a calculating package that takes arguments and returns a quantity or a number.
 */
class FormulaDocsTest {
  private static final Path SOURCES = Path.of("src/main/java/io/github/brinewright");
  static final List<String> CALCULATING =
      List.of(
          "softener",
          "home",
          "demand",
          "hydraulics",
          "regeneration",
          "sizing",
          "cost",
          "sale",
          "treatment");
  private static final Pattern FORMULA =
      Pattern.compile(
          "/\\*\\*((?:(?!\\*/).)*)\\*/\\s+public static"
              + " (double|BigDecimal|Hardness|Mass|Volume|Density|Viscosity|FlowRate|FlowVelocity"
              + "|Length|Pressure)\\s+(\\w+)\\(\\s*\\w",
          Pattern.DOTALL);
  private static final Pattern TYPE_DOC =
      Pattern.compile(
          "/\\*\\*((?:(?!\\*/).)*)\\*/\\s+public (?:final )?(?:class|record)", Pattern.DOTALL);

  static List<Path> files() throws IOException {
    List<Path> files = new ArrayList<>();
    for (String name : CALCULATING) {
      try (Stream<Path> found = Files.list(SOURCES.resolve(name))) {
        found.filter(file -> file.toString().endsWith(".java")).forEach(files::add);
      }
    }
    return files;
  }

  @Test
  void everyPublicFormulaNamesItsSourceAndAnExample() throws IOException {
    int formulas = 0;
    List<String> lacking = new ArrayList<>();
    for (Path file : files()) {
      String code = Files.readString(file);
      Matcher type = TYPE_DOC.matcher(code);
      String general = type.find() ? type.group(1) : "";
      Matcher formula = FORMULA.matcher(code);
      while (formula.find()) {
        formulas++;
        String doc = formula.group(1) + general;
        if (!doc.contains("Source") || !doc.contains("xample")) {
          lacking.add(file.getFileName() + " " + formula.group(3));
        }
      }
    }
    assertThat(lacking).as("formulas without a source or an example").isEmpty();
    assertThat(formulas).as("formulas found").isGreaterThan(15);
  }
}
