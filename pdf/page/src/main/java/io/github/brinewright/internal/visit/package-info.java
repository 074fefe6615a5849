/**
 * What stands on the page: the answers of a visit, read as the row of a job folder that they are.
 */
@NullMarked
package io.github.brinewright.internal.visit;

import org.jspecify.annotations.NullMarked;
