package io.github.brinewright.cli;

/** The command was called in a way that cannot be carried out. */
final class UsageException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  UsageException(String message) {
    super(message);
  }
}
