/**
 * A job on screen, served on this machine alone: a visit is filled, sizes are compared, documents
 * are taken away.
 */
@NullMarked
package io.github.brinewright.page;

import org.jspecify.annotations.NullMarked;
