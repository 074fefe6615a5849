package io.github.brinewright.cli;

import io.github.brinewright.quantity.Hardness;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a hardness with its unit. */
final class HardnessConverter implements ITypeConverter<Hardness> {
  private static final Pattern FORM = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)\\s*([A-Za-z/]+)");
  private static final Map<String, DoubleFunction<Hardness>> UNITS = new LinkedHashMap<>();

  static {
    UNITS.put("gpg", Hardness::ofGrainsPerGallon);
    UNITS.put("mg/l", Hardness::ofMilligramsPerLitre);
    UNITS.put("dh", Hardness::ofGermanDegrees);
    UNITS.put("fh", Hardness::ofFrenchDegrees);
    UNITS.put("clark", Hardness::ofEnglishDegrees);
    UNITS.put("mmol/l", Hardness::ofMillimolesPerLitre);
  }

  @Override
  public Hardness convert(String text) {
    Matcher form = FORM.matcher(text.strip());
    DoubleFunction<Hardness> unit =
        form.matches() ? UNITS.get(form.group(2).toLowerCase(Locale.ROOT)) : null;
    if (unit == null) {
      throw new TypeConversionException(
          "\""
              + text
              + "\" is not a hardness; write a number and its unit, one of "
              + String.join(", ", UNITS.keySet())
              + ", as in 22gpg");
    }
    Hardness hardness = hardness(unit, Double.parseDouble(form.group(1)));
    if (!hardness.isPositive()) {
      throw new TypeConversionException("a hardness of " + text + " needs no softener");
    }
    return hardness;
  }

  private static Hardness hardness(DoubleFunction<Hardness> unit, double number) {
    try {
      return unit.apply(number);
    } catch (IllegalArgumentException outOfRange) {
      throw new TypeConversionException(outOfRange.getMessage());
    }
  }
}
