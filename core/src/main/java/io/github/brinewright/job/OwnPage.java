package io.github.brinewright.job;

import io.github.brinewright.cost.LocalText;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A page of the dealer's own, printed in proposals after the signature. Immutable.
 *
 * @param title of the page, in one language or in several; not empty
 * @param text below it; may be empty
 * @param picture below that; null for none
 * @param alternative what the picture shows, for those who have it read aloud; empty without one
 */
public record OwnPage(
    LocalText title, LocalText text, @Nullable Logo picture, LocalText alternative) {
  /** Most pages of a dealer. */
  public static final int MOST = 3;

  /**
   * @param title of the page, in one language or in several
   * @param text below it
   * @param picture below that; null for none
   * @param alternative what the picture shows
   * @throws IllegalArgumentException when there is no title, or a picture of which it is not said
   *     what it shows
   */
  public OwnPage {
    if (title.isEmpty()) {
      throw new IllegalArgumentException("a page needs a title");
    }
    if (picture != null && alternative.isEmpty()) {
      throw new IllegalArgumentException("say what the picture " + picture.file() + " shows");
    }
  }

  /** {@return the picture where there is one} */
  Optional<Logo> drawn() {
    return Optional.ofNullable(picture);
  }
}
