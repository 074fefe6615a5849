/**
 * Writes the documents of a job and opens them again.
 *
 * <p>In goes a {@code Job}, read from a folder or built from objects; out come PDF files as bytes:
 * {@link io.github.brinewright.proposal.Proposals} writes proposals, one-page comparisons, settings
 * sheets and site-visit forms as the command line does, {@link
 * io.github.brinewright.proposal.Reopened} reads a proposal or a filled form back.
 *
 * <pre>{@code
 * Job job = JobFolder.read(Path.of("job")).job().orElseThrow();
 * Proposals proposals = Proposals.of(job);
 * for (QuotedHome home : job.homes()) {
 *   Files.write(Path.of(proposals.fileName(home)), proposals.write(home, LocalDate.now()));
 * }
 *
 * Reopened earlier = Reopened.read(Files.readAllBytes(Path.of("proposal-A1.pdf")));
 * QuotedHome again = job.home(earlier.homeId()).orElseThrow();
 * byte[] revised = proposals.since(earlier).write(again, LocalDate.now());
 * }</pre>
 */
@NullMarked
package io.github.brinewright.proposal;

import org.jspecify.annotations.NullMarked;
