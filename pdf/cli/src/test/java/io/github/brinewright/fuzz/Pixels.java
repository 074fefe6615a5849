package io.github.brinewright.fuzz;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** A small picture. */
final class Pixels {
  private Pixels() {}

  static byte[] png() {
    return encoded("png");
  }

  static byte[] jpeg() {
    return encoded("jpeg");
  }

  private static byte[] encoded(String format) {
    BufferedImage image = new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 24 * 16; i++) {
      image.setRGB(i % 24, i / 24, i * 40_503);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, format, out);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return out.toByteArray();
  }
}
