/**
 * The softener that is already in the house: what it does, what is wrong with it, what should be
 * set, and when a meter or a new unit is worth its price.
 */
@NullMarked
package io.github.brinewright.service;

import org.jspecify.annotations.NullMarked;
