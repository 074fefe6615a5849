package io.github.brinewright.area;

import picocli.CommandLine.Option;

/** What a study takes as given. */
final class AssumedOptions {
  @Option(
      names = "--source-gpg",
      description = "hardness that the public supply is treated to; 7 where empty")
  private double source = Assumed.USUAL.sourceGpg();

  @Option(names = "--draws", description = "of what is not known; 20 where empty, 0 for none")
  private int draws = Assumed.USUAL.draws();

  @Option(names = "--seed", description = "of the draws")
  private long seed = Assumed.USUAL.seed();

  Assumed assumed() {
    return new Assumed(source, draws, seed);
  }
}
