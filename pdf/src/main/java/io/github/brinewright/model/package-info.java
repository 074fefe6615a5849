/**
 * What documents say, before anybody draws them: sections of headings, labelled rows, tables,
 * charts as data and fields to fill, in no language yet. A {@link
 * io.github.brinewright.model.Document} is worded by a {@link io.github.brinewright.words.Wording}
 * when it is drawn.
 *
 * <p>A section of one's own:
 *
 * <pre>{@code
 * Section service =
 *     Section.of(
 *         "own.service",
 *         Phrase.plain("Service in your street"),
 *         Paragraph.of(Phrase.plain("We come by every second Tuesday.")));
 * }</pre>
 */
@NullMarked
package io.github.brinewright.model;

import org.jspecify.annotations.NullMarked;
