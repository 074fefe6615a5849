package io.github.brinewright.cli;

import java.util.ArrayList;
import java.util.List;

/** The first names of many, as a person reads them. */
final class Names {
  private static final int MOST = 20;

  private final List<String> first = new ArrayList<>();
  private boolean more;

  void add(String name) {
    if (first.size() < MOST) {
      first.add(name);
    } else {
      more = true;
    }
  }

  boolean isEmpty() {
    return first.isEmpty();
  }

  @Override
  public String toString() {
    return String.join(", ", first) + (more ? " and others" : "");
  }
}
