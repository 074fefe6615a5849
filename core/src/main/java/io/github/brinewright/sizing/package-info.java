/** One softener unit at one home: the design and everything that speaks against it. */
@NullMarked
package io.github.brinewright.sizing;

import org.jspecify.annotations.NullMarked;
