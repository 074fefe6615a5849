package io.github.brinewright.words;

/**
 * A step in words.
 *
 * @param name what is worked out
 * @param formula in words
 * @param numbers the formula with its numbers: plain arithmetic that a pocket calculator can redo
 * @param result with its unit
 * @param source who states the formula
 */
public record WorkedStep(
    String name, String formula, String numbers, String result, String source) {}
