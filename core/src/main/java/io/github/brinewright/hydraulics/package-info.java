/** Flow through the bed: water properties, pressure loss, backwash and service flow. */
@NullMarked
package io.github.brinewright.hydraulics;

import org.jspecify.annotations.NullMarked;
