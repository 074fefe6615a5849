package io.github.brinewright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Whatever comes in from outside ends in words: no raw exception, no run without end. Some changed
 * inputs each; in the profile {@code long}, or with {@code -Dfuzz.seconds=600}, as many as the time
 * allows.
 */
class FuzzTest {
  static {
    // What libraries log about damaged files is not looked at.
    System.setProperty("org.apache.commons.logging.Log", "org.apache.commons.logging.impl.NoOpLog");
  }

  private static final int BRIEFLY = 12;
  private static final long SECONDS =
      Long.getLong("fuzz.seconds", Boolean.getBoolean("long") ? 60 : 0);
  private static final Duration HANGS = Duration.ofSeconds(20);

  @ParameterizedTest
  @EnumSource
  void whateverComesInEndsInWords(Target target) {
    Mutator mutator = new Mutator(Long.getLong("fuzz.seed", SECONDS > 0 ? System.nanoTime() : 1));
    List<byte[]> seeds = seeds(target);
    long begun = System.nanoTime();
    int done = 0;
    while (SECONDS > 0 ? System.nanoTime() - begun < SECONDS * 1_000_000_000L : done < BRIEFLY) {
      byte[] seed = seeds.get(done % seeds.size());
      tryOut(target, target.takesDecisions() ? mutator.decisions() : mutator.mutate(seed));
      done++;
    }
    System.getLogger("fuzz").log(level(), "{0}: {1} inputs", target, done);
  }

  private static System.Logger.Level level() {
    return SECONDS > 0 ? System.Logger.Level.INFO : System.Logger.Level.DEBUG;
  }

  private static List<byte[]> seeds(Target target) {
    return switch (target) {
      case LOGO -> List.of(target.seed(), Pixels.jpeg());
      case ARGUMENTS ->
          Stream.concat(Stream.of(Arguments.SEED), Arguments.OTHERS.stream())
              .map(String::getBytes)
              .toList();
      default -> List.of(target.seed());
    };
  }

  /** Inputs that have been found to fail once. */
  @ParameterizedTest
  @EnumSource
  void whatFailedOnceDoesNotFailAgain(Target target) throws IOException {
    Path found = Path.of("src/test/resources/io/github/brinewright/fuzz", target.name());
    if (Files.isDirectory(found)) {
      try (Stream<Path> cases = Files.list(found)) {
        for (Path each : cases.sorted().toList()) {
          tryOut(target, Files.readAllBytes(each));
        }
      }
    }
  }

  private static void tryOut(Target target, byte[] data) {
    long begun = System.nanoTime();
    try {
      target.tryOut(data);
    } catch (RuntimeException | Error failed) {
      String input = Base64.getEncoder().encodeToString(data);
      throw new AssertionError(target + " fails on (Base64) " + input, failed);
    }
    assertThat(Duration.ofNanos(System.nanoTime() - begun))
        .as("%s on %s", target, Base64.getEncoder().encodeToString(data))
        .isLessThan(HANGS);
  }
}
