package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.Control;
import java.util.Optional;
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
   * The best setting of a softener.
   *
   * @param id of the softener in the price list
   */
  public static CandidateChoice ofSoftener(String id) {
    return new CandidateChoice(id, null, null);
  }

  /** The same at one of the dosages that the price list gives the softener. */
  public CandidateChoice dosage(SaltDosage wanted) {
    return new CandidateChoice(softenerId, wanted, control);
  }

  /** The same with one of the controls that the price list gives the softener. */
  public CandidateChoice control(Control wanted) {
    return new CandidateChoice(softenerId, dosage, wanted);
  }

  /** The best candidate of a home that fits; empty when none does. */
  public Optional<Candidate> in(Comparison comparison) {
    return comparison.candidates().stream().filter(this::fits).findFirst();
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
