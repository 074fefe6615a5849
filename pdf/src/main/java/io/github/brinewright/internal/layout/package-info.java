/**
 * Turns the model of a document into blocks, measures them, plans the pages, and draws them; tags
 * are opened as pieces are put on pages.
 */
@NullMarked
package io.github.brinewright.internal.layout;

import org.jspecify.annotations.NullMarked;
