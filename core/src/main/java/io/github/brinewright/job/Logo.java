package io.github.brinewright.job;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A dealer's logo. It is taken from a PNG or JPEG and kept as a PNG of 8 bits a colour, with
 * transparency where there was any, and of at most 400,000 pixels: more would not be seen on paper.
 * So whatever is accepted here can be drawn. Nothing is written to disk on the way. Immutable.
 *
 * <pre>{@code
 * Logo logo = Logo.of("logo.png", Files.readAllBytes(Path.of("logo.png")));
 * Dealer dealer = Dealer.named("Weir Street Water").logo(logo).build();
 * }</pre>
 */
public final class Logo {
  /** Most bytes of the picture given. */
  public static final int MOST_BYTES = 2_000_000;

  /** Most pixels on a side of the picture given. */
  public static final int MOST_PIXELS = 4_000;

  private final String file;
  private final int width;
  private final int height;
  private final byte[] content;

  /** Why a picture is refused. */
  public enum Reason {
    /** It has more than {@link Logo#MOST_BYTES}. */
    TOO_LARGE,
    /** It is neither PNG nor JPEG. */
    NOT_A_PICTURE,
    /** It has more than {@link Logo#MOST_PIXELS} on a side. */
    TOO_MANY_PIXELS,
    /** It is damaged, or of a kind that cannot be drawn, as a JPEG in printing inks. */
    DAMAGED
  }

  /** Thrown for a picture that is refused. */
  public static final class RefusedException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    /** Why it is refused. */
    private final Reason reason;

    RefusedException(Reason reason, @Nullable Exception cause) {
      super("the picture cannot be used: " + reason, cause);
      this.reason = reason;
    }

    /** {@return why it is refused} */
    public Reason reason() {
      return reason;
    }
  }

  private Logo(String file, BufferedImage image) {
    this.file = file;
    width = image.getWidth();
    height = image.getHeight();
    content = Pictures.png(image);
  }

  /**
   * {@return a logo from the bytes of a picture}
   *
   * @param file name of the picture within a job, as {@code logo.png}
   * @param picture a PNG or JPEG of at most 2 MB and 4,000 pixels a side
   * @throws RefusedException when it is none, or too large
   */
  public static Logo of(String file, byte[] picture) {
    if (picture.length > MOST_BYTES) {
      throw new RefusedException(Reason.TOO_LARGE, null);
    }
    return new Logo(file, Pictures.decode(picture, MOST_PIXELS));
  }

  /** {@return its name within a job} */
  public String file() {
    return file;
  }

  /** {@return the width in pixels} */
  public int width() {
    return width;
  }

  /** {@return the height in pixels} */
  public int height() {
    return height;
  }

  /** {@return a copy of the picture as PNG} */
  public byte[] content() {
    return content.clone();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Logo logo
        && file.equals(logo.file)
        && Arrays.equals(content, logo.content);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(content);
  }

  @Override
  public String toString() {
    return file + ", " + width + " × " + height + " pixels";
  }
}
