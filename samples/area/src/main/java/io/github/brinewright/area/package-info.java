/** What every softener of a town takes, and what would change it, on Apache Spark. */
@NullMarked
package io.github.brinewright.area;

import org.jspecify.annotations.NullMarked;
