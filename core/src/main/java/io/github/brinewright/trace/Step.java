package io.github.brinewright.trace;

import java.util.List;

/**
 * One step of the calculation: the numbers that went in, in the order of its formula, and what came
 * out.
 *
 * @param kind which formula
 * @param inputs the numbers put in
 * @param result the number that came out
 * @param source who states the formula
 */
public record Step(StepKind kind, List<Figure> inputs, Figure result, Source source) {
  /**
   * Keeps its own copy of {@code inputs}.
   *
   * @param kind which formula
   * @param inputs the numbers put in
   * @param result the number that came out
   * @param source who states the formula
   */
  public Step {
    inputs = List.copyOf(inputs);
  }
}
