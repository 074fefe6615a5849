package io.github.brinewright.internal.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Pictures go into a document as they are. */
class PictureTest {
  private static final int TEAL = 0x008080;

  private static byte[] file(int type, String format) throws IOException {
    BufferedImage image = new BufferedImage(24, 16, type);
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        image.setRGB(x, y, 0xFF000000 | TEAL);
      }
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, format, bytes);
    return bytes.toByteArray();
  }

  static Stream<Arguments> kinds() {
    return Stream.of(
        Arguments.of(BufferedImage.TYPE_INT_RGB, "png", COSName.FLATE_DECODE),
        Arguments.of(BufferedImage.TYPE_INT_ARGB, "png", COSName.FLATE_DECODE),
        Arguments.of(BufferedImage.TYPE_BYTE_GRAY, "png", COSName.FLATE_DECODE),
        Arguments.of(BufferedImage.TYPE_BYTE_INDEXED, "png", COSName.FLATE_DECODE),
        Arguments.of(BufferedImage.TYPE_INT_RGB, "jpeg", COSName.DCT_DECODE),
        Arguments.of(BufferedImage.TYPE_BYTE_GRAY, "jpeg", COSName.DCT_DECODE));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void aPictureLooksTheSameInTheDocument(int type, String format, COSName filter)
      throws IOException {
    byte[] content = file(type, format);
    BufferedImage original = ImageIO.read(new ByteArrayInputStream(content));
    try (PDDocument document = new PDDocument()) {
      PDImageXObject picture = Picture.of(content, document);

      assertThat(picture.getCOSObject().getFilters()).isEqualTo(filter);
      assertThat(picture.getWidth()).isEqualTo(24);
      assertThat(picture.getHeight()).isEqualTo(16);
      if (type == BufferedImage.TYPE_BYTE_GRAY && filter == COSName.DCT_DECODE) {
        // Java takes a gray picture's samples for linear ones where it makes colours of them.
        assertThat(picture.getImage().getRaster().getSample(5, 5, 0))
            .isEqualTo(original.getRaster().getSample(5, 5, 0));
      } else {
        assertThat(picture.getImage().getRGB(5, 5)).isEqualTo(original.getRGB(5, 5));
      }
    }
  }

  @Test
  void aDirectoryForTemporaryFilesIsNotNeeded() throws IOException {
    byte[] content = file(BufferedImage.TYPE_INT_RGB, "jpeg");
    File usual = ImageIO.getCacheDirectory();
    boolean used = ImageIO.getUseCache();
    Path gone = Files.createTempDirectory("gone");
    ImageIO.setCacheDirectory(gone.toFile());
    Files.delete(gone);
    ImageIO.setUseCache(true);
    try (PDDocument document = new PDDocument()) {
      assertThat(Picture.of(content, document).getWidth()).isEqualTo(24);
    } finally {
      ImageIO.setUseCache(used);
      ImageIO.setCacheDirectory(usual);
    }
  }

  @Test
  void whatIsNoPictureIsRefused() throws IOException {
    try (PDDocument document = new PDDocument()) {
      assertThatThrownBy(() -> Picture.of("no picture".getBytes("US-ASCII"), document))
          .isInstanceOf(IOException.class)
          .hasMessageContaining("PNG");
    }
  }
}
