/** The rules a careful practitioner applies to a home and to each candidate. */
@NullMarked
package io.github.brinewright.finding;

import org.jspecify.annotations.NullMarked;
