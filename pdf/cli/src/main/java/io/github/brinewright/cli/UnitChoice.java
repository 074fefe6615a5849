package io.github.brinewright.cli;

import io.github.brinewright.job.Job;
import io.github.brinewright.proposal.CandidateChoice;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.Control;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Which unit of a job folder is set up: its id and, where they are named, dosage and control. */
final class UnitChoice {
  private static final String CONTROL = "controls";
  private static final String DOSAGE = "dosages_lb_per_ft3";

  private final QuickHome quick;
  private final @Nullable String unit;

  UnitChoice(QuickHome quick, @Nullable String unit) {
    this.quick = quick;
    this.unit = unit;
  }

  /** That all that is given belongs to a job folder, and tells which softener is meant. */
  void requireFits(boolean present, boolean withMeter) {
    if (quick.givenBeside(Set.of(CONTROL, DOSAGE))) {
      throw new UsageException("give either a JOBFOLDER or options of a home, not both");
    }
    if (present && (unit != null || !quick.unit().isEmpty())) {
      throw new UsageException(
          "--present is about the softener in the house; leave out --unit, --control and --dosage");
    }
    if (withMeter && !present) {
      throw new UsageException("--with-meter goes with --present");
    }
    if (!present && unit == null) {
      throw new UsageException(
          "name a unit with --unit, or give --present for the softener in the house");
    }
  }

  CandidateChoice choice() {
    Map<String, String> given = quick.unit();
    return choice(String.valueOf(unit), given.get(DOSAGE), given.get(CONTROL));
  }

  /** A unit and, where they are named, its dosage and control. */
  static CandidateChoice choice(String unit, @Nullable String dosage, @Nullable String control) {
    CandidateChoice choice = CandidateChoice.ofSoftener(unit);
    if (control != null) {
      choice = choice.control(control(control));
    }
    return dosage == null ? choice : choice.dosage(dosage(dosage));
  }

  private static Control control(String word) {
    return Arrays.stream(Control.values())
        .filter(control -> code(control).equals(word.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new UsageException(
                    "--control is \""
                        + word
                        + "\", but must be one of "
                        + Arrays.stream(Control.values())
                            .map(UnitChoice::code)
                            .collect(Collectors.joining(", "))));
  }

  private static String code(Control control) {
    return control.name().toLowerCase(Locale.ROOT);
  }

  private static SaltDosage dosage(String text) {
    try {
      return SaltDosage.ofPoundsPerCubicFoot(Double.parseDouble(text));
    } catch (NumberFormatException noNumber) {
      throw new UsageException("--dosage is \"" + text + "\", but must be a number");
    } catch (IllegalArgumentException outOfRange) {
      throw new UsageException("--dosage is " + text + ": " + outOfRange.getMessage());
    }
  }

  UsageException notFound(Job job) {
    return notFound(String.valueOf(unit), job);
  }

  /** What is said where a price list has no such unit. */
  static UsageException notFound(String unit, Job job) {
    String known =
        job.prices().offers().stream()
            .map(offer -> offer.softener().id())
            .sorted()
            .collect(Collectors.joining(", "));
    return new UsageException(
        "there is no unit \""
            + unit
            + "\" with that dosage and control; units are: "
            + known
            + ", with the dosages and controls that units.csv gives them");
  }
}
