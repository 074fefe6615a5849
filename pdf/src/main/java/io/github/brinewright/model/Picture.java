package io.github.brinewright.model;

import io.github.brinewright.job.Logo;

/**
 * A picture of the dealer's own.
 *
 * @param picture to draw
 * @param alternative what it shows, for those who have it read aloud
 */
public record Picture(Logo picture, Phrase alternative) implements Element {}
