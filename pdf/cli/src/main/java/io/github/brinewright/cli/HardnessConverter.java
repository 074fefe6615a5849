package io.github.brinewright.cli;

import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads a hardness with its unit. One in gpg or mg/L stays as it is written; any other is converted
 * to gpg.
 */
final class HardnessConverter implements ITypeConverter<HardnessCell> {
  private static final Pattern FORM = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)\\s*([A-Za-z/]+)");
  private static final String RANGE =
      WaterAnalysis.HARDNESS.low().grainsPerGallon()
          + " to "
          + WaterAnalysis.HARDNESS.high().grainsPerGallon()
          + " gpg, whatever its unit";
  private static final int DECIMALS = 15;
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
  public HardnessCell convert(String text) {
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
    Hardness hardness = unit.apply(Double.parseDouble(form.group(1)));
    if (!WaterAnalysis.HARDNESS.holds(hardness)) {
      throw new TypeConversionException("\"" + text + "\" must be from " + RANGE);
    }
    return cell(form.group(1), form.group(2).toLowerCase(Locale.ROOT), hardness);
  }

  private static HardnessCell cell(String number, String name, Hardness hardness) {
    return switch (name) {
      case "gpg" -> new HardnessCell("hardness_gpg", number);
      case "mg/l" -> new HardnessCell("hardness_mg_per_l", number);
      default -> new HardnessCell("hardness_gpg", decimal(hardness.grainsPerGallon()));
    };
  }

  private static String decimal(double number) {
    return new BigDecimal(number).setScale(DECIMALS, RoundingMode.HALF_EVEN).toPlainString();
  }
}
