/**
 * What the year and other prices say of a choice: best dosage, whether it holds, what nothing
 * beats.
 *
 * <pre>{@code
 * HomeStudy study = HomeStudy.of(comparison, HomeStudy.USUAL_YEARS).orElseThrow();
 * double regenerations = study.controls().get(Control.CLOCK).regenerations().mean();
 * boolean holds = study.changes().stream().allMatch(Sensitivity::holds);
 * }</pre>
 */
@NullMarked
package io.github.brinewright.study;

import org.jspecify.annotations.NullMarked;
