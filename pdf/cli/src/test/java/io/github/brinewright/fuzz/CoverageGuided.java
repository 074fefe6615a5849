package io.github.brinewright.fuzz;

/**
 * The same, led by the branches that inputs reach: the entry that a fuzzer of the JVM calls. Which
 * target is said by {@code -Dfuzz.target=SITES}; DEVELOPERS.md has the command.
 */
public final class CoverageGuided {
  private static final Target TARGET = Target.valueOf(System.getProperty("fuzz.target", "SITES"));

  private CoverageGuided() {}

  /**
   * Tries one input.
   *
   * @param data of the input
   */
  public static void fuzzerTestOneInput(byte[] data) {
    TARGET.tryOut(data);
  }
}
