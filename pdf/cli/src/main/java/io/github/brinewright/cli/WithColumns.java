package io.github.brinewright.cli;

import picocli.CommandLine.Model.CommandSpec;

/** A command that has an option for each column of a file. */
interface WithColumns {
  /** Adds them. */
  void addTo(CommandSpec command);
}
