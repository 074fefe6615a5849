package io.github.brinewright.model;

import io.github.brinewright.job.Logo;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Who the document comes from, at its head.
 *
 * @param name of the dealer
 * @param details in one line: address, phone, license
 * @param logo beside the name, where there is one
 */
public record Letterhead(String name, List<String> details, @Nullable Logo logo) {
  /**
   * Keeps its own copy of {@code details}.
   *
   * @param name of the dealer
   * @param details in one line: address, phone, license
   * @param logo beside the name, where there is one
   */
  public Letterhead {
    details = List.copyOf(details);
  }
}
