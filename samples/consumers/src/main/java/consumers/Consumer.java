package consumers;

import java.nio.file.Path;

/** A program that uses the library. */
@FunctionalInterface
interface Consumer {
  /**
   * Runs it.
   *
   * @param out folder for what it writes
   * @return what it found, in one line
   */
  String run(Path out) throws Exception;

  /** Stops when something is not as it should be. */
  static void require(boolean fact, String meaning) {
    if (!fact) {
      throw new IllegalStateException("not so: " + meaning);
    }
  }
}
