/** Benchmarks. */
@NullMarked
package io.github.brinewright.bench;

import org.jspecify.annotations.NullMarked;
