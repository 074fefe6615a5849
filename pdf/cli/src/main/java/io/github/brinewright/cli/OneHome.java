package io.github.brinewright.cli;

import io.github.brinewright.job.HomeRow;
import org.jspecify.annotations.Nullable;

/**
 * Looks for one home among those that come by, and keeps the names of some for whoever misses it.
 */
final class OneHome {
  private final String siteId;
  private final Names others = new Names();
  private @Nullable HomeRow found;

  OneHome(String siteId) {
    this.siteId = siteId;
  }

  void look(HomeRow row) {
    String id = row.home().site().id();
    others.add(id);
    if (id.equals(siteId)) {
      found = row;
    }
  }

  HomeRow found() {
    if (found == null) {
      throw new UsageException("there is no usable home \"" + siteId + "\"; homes are: " + others);
    }
    return found;
  }
}
