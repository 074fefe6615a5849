package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.Control;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Which candidate of a home is meant: a softener and, where they are named, its dosage and control.
 * The best that fits is taken. Immutable.
 *
 * <pre>{@code
 * CandidateChoice choice =
 *     CandidateChoice.ofSoftener("my-unit")
 *         .dosage(SaltDosage.ofPoundsPerCubicFoot(6))
 *         .control(Control.METERED_AT_NIGHT);
 * }</pre>
 */
public final class CandidateChoice {
  private static final double SAME_POUNDS = 1e-6;

  private final String softenerId;
  private final @Nullable SaltDosage dosage;
  private final @Nullable Control control;

  private CandidateChoice(
      String softenerId, @Nullable SaltDosage dosage, @Nullable Control control) {
    this.softenerId = softenerId;
    this.dosage = dosage;
    this.control = control;
  }

  /**
   * {@return the best setting of a softener}
   *
   * @param id of the softener in the price list
   */
  public static CandidateChoice ofSoftener(String id) {
    return new CandidateChoice(id, null, null);
  }

  /**
   * {@return the same at one of the dosages that the price list gives the softener}
   *
   * @param wanted as the price list has it
   */
  public CandidateChoice dosage(SaltDosage wanted) {
    return new CandidateChoice(softenerId, wanted, control);
  }

  /**
   * {@return the same with one of the controls that the price list gives the softener}
   *
   * @param wanted as the price list has it
   */
  public CandidateChoice control(Control wanted) {
    return new CandidateChoice(softenerId, dosage, wanted);
  }

  /**
   * {@return the best candidate of a home that fits; empty when none does}
   *
   * @param comparison of the home
   */
  public Optional<Candidate> in(Comparison comparison) {
    return comparison.candidates().stream().filter(this::fits).findFirst();
  }

  /**
   * {@return the best candidate of a home that fits and keeps every limit, so that it may be
   * quoted}
   *
   * @param comparison of the home
   * @throws IllegalArgumentException when the home has no such candidate, or it breaks a limit:
   *     which
   */
  public Candidate quotable(Comparison comparison) {
    Candidate wished =
        in(comparison)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "there is no unit \"" + softenerId + "\" with that dosage and control"));
    if (!wished.feasible()) {
      throw new IllegalArgumentException(
          "the unit \""
              + softenerId
              + "\" cannot be quoted for home \""
              + comparison.home().site().id()
              + "\": it breaks "
              + wished.broken().stream().map(Finding::code).collect(Collectors.joining(", "))
              + "; see what compare says of it");
    }
    return wished;
  }

  private boolean fits(Candidate candidate) {
    return candidate.softener().id().equals(softenerId)
        && (control == null || candidate.setup().control() == control)
        && (dosage == null || candidate.setup().dosage().filter(this::same).isPresent());
  }

  private boolean same(SaltDosage given) {
    return dosage != null
        && Math.abs(given.poundsPerCubicFoot() - dosage.poundsPerCubicFoot()) < SAME_POUNDS;
  }
}
