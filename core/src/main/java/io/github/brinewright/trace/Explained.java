package io.github.brinewright.trace;

import java.util.List;

/** A result that can show how it was worked out. */
public interface Explained {
  /** {@return the steps in the order in which a reader would redo them} */
  List<Step> steps();
}
