package io.github.brinewright.words;

import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Quantity;
import io.github.brinewright.quantity.Viscosity;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a step with places for its figures. {@code {0}} stands for the first figure with the
 * usual decimals of its kind, {@code {0;2}} with two decimals, {@code {0;2 ft3}} for its bare
 * number in a unit that only the formula uses.
 */
final class StepText {
  private static final Pattern PLACE = Pattern.compile("\\{(\\d+)(?:;(\\d+)(?: ([^}]+))?)?\\}");

  private StepText() {}

  /** Puts figures into a text; {@code write} turns each into words. */
  static String fill(String text, List<Figure> figures, Function<Figure, String> write) {
    return PLACE
        .matcher(text)
        .replaceAll(place -> Matcher.quoteReplacement(write.apply(at(place, figures))));
  }

  private static Figure at(MatchResult place, List<Figure> figures) {
    Figure figure = figures.get(Integer.parseInt(place.group(1)));
    if (place.group(2) == null) {
      return figure;
    }
    int decimals = Integer.parseInt(place.group(2));
    return place.group(3) == null
        ? rounded(figure, decimals)
        : Figure.of(inUnit(place.group(3), figure), decimals);
  }

  private static Figure rounded(Figure figure, int decimals) {
    if (figure instanceof Figure.Physical physical) {
      return Figure.of(physical.value(), decimals);
    } else if (figure instanceof Figure.Number number) {
      return Figure.of(number.value(), decimals);
    } else if (figure instanceof Figure.Days days) {
      return Figure.days(days.days(), decimals);
    } else if (figure instanceof Figure.Time time) {
      return Figure.of(time.value(), decimals);
    }
    throw new IllegalArgumentException("decimals cannot be chosen for " + figure);
  }

  private static double inUnit(String unit, Figure figure) {
    Quantity<?> value = ((Figure.Physical) figure).value();
    return switch (unit) {
      case "ft3" -> ((Volume) value).cubicFeet();
      case "m" -> ((Length) value).metres();
      case "m/s" -> ((FlowVelocity) value).metresPerSecond();
      case "Pa s" -> ((Viscosity) value).millipascalSeconds() / 1000;
      default -> throw new IllegalArgumentException("no formula is written in " + unit);
    };
  }
}
