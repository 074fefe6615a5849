/** The only package that touches PDFBox: fonts, pages, tags and metadata. */
@NullMarked
package io.github.brinewright.internal.document;

import org.jspecify.annotations.NullMarked;
