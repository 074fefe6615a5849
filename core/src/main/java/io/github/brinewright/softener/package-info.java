/**
 * What a dealer stocks: softeners, resins with their capacity curves, vessels, brine tanks,
 * controls.
 */
@NullMarked
package io.github.brinewright.softener;

import org.jspecify.annotations.NullMarked;
