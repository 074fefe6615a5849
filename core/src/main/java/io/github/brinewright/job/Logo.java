package io.github.brinewright.job;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.ImageIO;

/**
 * A dealer's logo: a PNG or JPEG picture.
 *
 * @param file its name
 * @param width in pixels
 * @param height in pixels
 * @param content bytes of the file, not to be changed
 */
public record Logo(String file, int width, int height, byte[] content) {
  private static final int LARGEST_BYTES = 2_000_000;
  private static final int MOST_PIXELS = 4_000;

  /** The picture, or empty when it is none that can be drawn. */
  static Optional<Logo> read(String file, byte[] content) {
    boolean jpeg = content.length > 2 && (content[0] & 0xFF) == 0xFF && (content[1] & 0xFF) == 0xD8;
    boolean png = content.length > 4 && content[0] == (byte) 0x89 && content[1] == 'P';
    if (content.length > LARGEST_BYTES || !(jpeg || png)) {
      return Optional.empty();
    }
    try {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(content));
      return Optional.ofNullable(image)
          .filter(i -> i.getWidth() <= MOST_PIXELS && i.getHeight() <= MOST_PIXELS)
          .map(i -> new Logo(file, i.getWidth(), i.getHeight(), content));
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }
}
