/** What the page shows: models of documents as HTML, and the parts of the page that change. */
@NullMarked
package io.github.brinewright.internal.screen;

import org.jspecify.annotations.NullMarked;
