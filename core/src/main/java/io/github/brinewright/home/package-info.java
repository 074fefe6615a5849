/** What a visit gives: the site, its people, its water and its supply. */
@NullMarked
package io.github.brinewright.home;

import org.jspecify.annotations.NullMarked;
