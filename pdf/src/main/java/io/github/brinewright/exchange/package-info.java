/**
 * Results as they leave the library: comparisons as JSON and CSV, studies of present softeners as
 * JSON, with the unit in every name, and the data that a document carries.
 *
 * <pre>{@code
 * Wording words = Wording.of(Locale.US, UnitSystem.US);
 * for (QuotedHome home : job.homes()) {
 *   String json = ComparisonJson.one(job.compare(home), words);
 *   send(json);
 * }
 * publish(ComparisonJson.schema());
 * }</pre>
 */
@NullMarked
package io.github.brinewright.exchange;

import org.jspecify.annotations.NullMarked;
