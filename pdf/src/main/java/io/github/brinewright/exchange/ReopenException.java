package io.github.brinewright.exchange;

import org.jspecify.annotations.Nullable;

/**
 * A document cannot be opened again. Programs go by the {@link #reason}; the message is for a log.
 *
 * <pre>{@code
 * try {
 *   Reopened earlier = Reopened.read(bytes);
 * } catch (ReopenException failure) {
 *   switch (failure.reason()) {
 *     case NEWER_VERSION -> askForAnUpdate();
 *     default -> askForAnotherFile();
 *   }
 * }
 * }</pre>
 */
public final class ReopenException extends Exception {
  private static final long serialVersionUID = 1L;

  /** Why a document cannot be opened again. */
  public enum Reason {
    /** The bytes are no PDF. */
    NOT_A_PDF,
    /** A PDF, but one that is cut off, locked by a password or otherwise not to be read. */
    DAMAGED,
    /** A PDF that carries no data: of another program, or written without them. */
    NO_DATA,
    /** A form whose fields are gone, as after printing it to a new file. */
    FIELDS_LOST,
    /** Data written by a newer version of this library. */
    NEWER_VERSION,
    /** Data that are not of the form that this library writes. */
    MALFORMED_DATA
  }

  /** Why it cannot be opened. */
  private final Reason reason;

  /**
   * A failure.
   *
   * @param reason why
   * @param details for a log, in English
   * @param cause what led to it; null for nothing else
   */
  public ReopenException(Reason reason, String details, @Nullable Throwable cause) {
    super(details, cause);
    this.reason = reason;
  }

  /** {@return why it cannot be opened} */
  public Reason reason() {
    return reason;
  }
}
