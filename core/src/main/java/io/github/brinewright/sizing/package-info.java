/**
 * One setting of one softener at one home, worked out in full.
 *
 * <pre>{@code
 * Sizer sizer = new Sizer(new HomeLoad(site));
 * for (Setup setup : Setup.of(softener)) {
 *   Mass salt = sizer.design(setup).year().salt();
 * }
 * }</pre>
 */
@NullMarked
package io.github.brinewright.sizing;

import org.jspecify.annotations.NullMarked;
