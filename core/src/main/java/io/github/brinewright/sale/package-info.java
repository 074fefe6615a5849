/**
 * What a customer may choose from: packages with their prices, what may be added to each, and what
 * the total is then.
 *
 * <pre>{@code
 * Packages packages = Packages.of(comparison);
 * for (SalePackage each : packages.all()) {
 *   System.out.println(each.kind() + ": " + each.total(packages.extras()));
 * }
 * }</pre>
 */
@NullMarked
package io.github.brinewright.sale;

import org.jspecify.annotations.NullMarked;
