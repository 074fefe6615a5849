package io.github.brinewright.internal.document;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** Puts pictures into a document. In memory alone: a disk need not be writable. */
final class Picture {
  private static final int GRAY = 1;
  private static final int RGB = 3;

  private Picture() {}

  /**
   * A picture for one document.
   *
   * @throws IOException when it cannot be read
   */
  static PDImageXObject of(byte[] content, PDDocument document) throws IOException {
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(content))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw new IOException("the picture is neither PNG nor JPEG");
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in);
        return of(reader, content, document);
      } finally {
        reader.dispose();
      }
    }
  }

  /** A JPEG in gray or RGB as it is, everything else without loss. */
  private static PDImageXObject of(ImageReader reader, byte[] content, PDDocument document)
      throws IOException {
    if (reader.getFormatName().equalsIgnoreCase("jpeg")) {
      ImageTypeSpecifier type = reader.getRawImageType(0);
      int bands = type == null ? 0 : type.getNumBands();
      if (bands == GRAY || bands == RGB) {
        PDColorSpace colours = bands == GRAY ? PDDeviceGray.INSTANCE : PDDeviceRGB.INSTANCE;
        return new PDImageXObject(
            document,
            new ByteArrayInputStream(content),
            COSName.DCT_DECODE,
            reader.getWidth(0),
            reader.getHeight(0),
            8,
            colours);
      }
    }
    return LosslessFactory.createFromImage(document, reader.read(0));
  }
}
