package io.github.brinewright.trace;

import java.util.List;

/**
 * An input of a formula that is made of several figures, as a bed is of its depth and its beads.
 */
public interface Parts {
  /** {@return the figures, in the order in which the numbers of a step name them} */
  List<Figure> figures();
}
