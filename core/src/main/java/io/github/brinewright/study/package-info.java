/**
 * What the year and other prices say of a choice: best dosage, whether it holds, what nothing
 * beats.
 */
@NullMarked
package io.github.brinewright.study;

import org.jspecify.annotations.NullMarked;
