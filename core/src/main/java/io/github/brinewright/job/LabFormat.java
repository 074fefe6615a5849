package io.github.brinewright.job;

import io.github.brinewright.home.LabResult;
import io.github.brinewright.quantity.Concentration;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a laboratory reports of a substance: a number, a reporting limit as {@code <0.05}, or that
 * none was detected, as {@code ND} or in the words of a language.
 */
final class LabFormat implements Format<LabResult> {
  private static final String BELOW = "<";
  private static final String NONE = "ND";
  private static final Pattern NOT_DETECTED =
      Pattern.compile(
          "nd|n\\.d\\.|n/d|not detected|none detected|no detectad[oa]|non détectée?",
          Pattern.UNICODE_CASE);
  private static final Format<Concentration> AMOUNT =
      NumberFormats.of(Concentration::ofMilligramsPerLitre, Concentration::milligramsPerLitre);

  @Override
  public Optional<LabResult> read(Cell cell) {
    String text = cell.text();
    if (NOT_DETECTED.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
      return Optional.of(LabResult.NOT_DETECTED);
    }
    if (text.startsWith(BELOW)) {
      return below(cell, text.substring(BELOW.length()).strip());
    }
    if (!NumberFormats.isNumber(text) && !NumberFormats.hasComma(text)) {
      return cell.refuse(ProblemCode.NOT_A_LAB_RESULT);
    }
    return AMOUNT.read(cell).map(LabResult::measured);
  }

  private static Optional<LabResult> below(Cell cell, String limit) {
    if (!NumberFormats.isNumber(limit) && !NumberFormats.hasComma(limit)) {
      return cell.refuse(ProblemCode.NOT_A_LAB_RESULT);
    }
    Optional<Concentration> amount = AMOUNT.read(cell.part(limit));
    return amount.isPresent() && !amount.get().isPositive()
        ? cell.refuse(ProblemCode.REPORTING_LIMIT_ZERO)
        : amount.map(LabResult::below);
  }

  @Override
  public String write(LabResult result) {
    return switch (result.kind()) {
      case MEASURED -> AMOUNT.write(result.atMost());
      case BELOW_REPORTING_LIMIT -> BELOW + AMOUNT.write(result.atMost());
      case NOT_DETECTED -> NONE;
    };
  }
}
