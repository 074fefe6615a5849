package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.QuotedHome;

/**
 * A document of one home.
 *
 * @param home that it is about
 * @param comparison that it shows, with the verdict on the home
 * @param fileName its usual name
 * @param pdf bytes of the file, not to be changed
 */
public record HomeDocument(QuotedHome home, Comparison comparison, String fileName, byte[] pdf) {}
