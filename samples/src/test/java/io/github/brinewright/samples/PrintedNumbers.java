package io.github.brinewright.samples;

import com.fasterxml.jackson.jr.ob.JSON;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.exchange.ComparisonJson;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The numbers that a proposal of a comparison may print. */
final class PrintedNumbers {
  private static final Pattern NUMBER = Pattern.compile("\\d[\\d,]*(?:\\.\\d+)?");
  private static final int MOST_DECIMALS = 4;

  private final Set<String> allowed = new HashSet<>();

  /** All numbers of a text. */
  static List<String> in(String text) {
    Matcher matcher = NUMBER.matcher(text);
    return matcher
        .results()
        .map(result -> result.group().replaceAll(",$", "").replace(",", ""))
        .toList();
  }

  PrintedNumbers allowAllOf(Comparison comparison) throws IOException {
    Wording words = Wording.of(Locale.US, UnitSystem.US);
    allowTree(JSON.std.anyFrom(ComparisonJson.one(comparison, words)));
    comparison
        .closest()
        .steps()
        .forEach(
            step -> {
              allowText(words.step(step).numbers());
              allowText(words.step(step).formula());
              allowText(words.step(step).result());
              allowText(words.source(step.source()));
            });
    return this;
  }

  private void allowTree(@Nullable Object node) {
    if (node instanceof Map<?, ?> map) {
      map.values().forEach(this::allowTree);
    } else if (node instanceof List<?> list) {
      list.forEach(this::allowTree);
    } else if (node instanceof Number number) {
      allow(new BigDecimal(number.toString()));
    } else if (node instanceof String text) {
      allowText(text);
    }
  }

  /** A number in all its roundings. */
  PrintedNumbers allow(BigDecimal number) {
    for (int decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
      allowed.add(number.abs().setScale(decimals, RoundingMode.HALF_UP).toPlainString());
    }
    return this;
  }

  /** The numbers of a text just as they stand. */
  PrintedNumbers allowText(String text) {
    allowed.addAll(in(text));
    return this;
  }

  boolean allows(String number) {
    return allowed.contains(number);
  }
}
