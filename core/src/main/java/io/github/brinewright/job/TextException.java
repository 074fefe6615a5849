package io.github.brinewright.job;

import io.github.brinewright.job.Problem.Argument;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;

/** A file that is no text of ours: what is wrong with it, and on which line. */
final class TextException extends IOException {
  private static final long serialVersionUID = 1;

  private final ProblemCode code;
  private final int line;
  private final int[] limits;

  /** On line 0 it concerns the file as a whole. */
  TextException(ProblemCode code, int line, int... limits) {
    super(code.name());
    this.code = code;
    this.line = line;
    this.limits = limits.clone();
  }

  /** The same as a problem of the file. */
  Problem in(String file) {
    List<Argument> arguments =
        IntStream.of(limits).mapToObj(Argument.Number::of).map(Argument.class::cast).toList();
    return new Problem(new Problem.Place(file, line, ""), "", code, arguments);
  }
}
