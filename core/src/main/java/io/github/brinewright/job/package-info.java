/**
 * Homes to be quoted, with a dealer and a price list: read from plain CSV files, with every problem
 * reported at once, or built from objects and written as such files.
 *
 * <pre>{@code
 * JobReading reading = JobFolder.read(Path.of("samples/job"));
 * ProblemWords words = new ProblemWords(Locale.US);
 * reading.problems().stream().map(words::say).forEach(System.err::println);
 * Job job = reading.job().orElseThrow();
 * Comparison comparison = job.compare(job.home("H01").orElseThrow());
 * }</pre>
 *
 * <p>A column is declared once, in {@link io.github.brinewright.job.SiteColumns} and its like: its
 * name, kind, unit and range, what an empty cell means, where its value goes and where it comes
 * from. The reader, the hint of a near name, the form of a site visit and the tables of the page
 * that newcomers read are derived from it. What it means is said in the bundle {@code columns}.
 *
 * <p>What is wrong is a {@link io.github.brinewright.job.Problem}: a code with its arguments, which
 * {@link io.github.brinewright.job.ProblemWords} writes in English, Spanish or French.
 */
@NullMarked
package io.github.brinewright.job;

import org.jspecify.annotations.NullMarked;
