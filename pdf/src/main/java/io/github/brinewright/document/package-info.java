/** The only package that touches PDFBox: fonts, pages, tags and metadata. */
@NullMarked
package io.github.brinewright.document;

import org.jspecify.annotations.NullMarked;
