package io.github.brinewright.job;

import io.github.brinewright.job.Logo.Reason;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Decodes and encodes pictures in memory; the size is read from the header first. */
final class Pictures {
  private static final double MOST_KEPT = 400_000;

  private Pictures() {}

  /** The pixels of a PNG or JPEG, red, green and blue with 8 bits each. */
  static BufferedImage decode(byte[] picture, int mostPixels) {
    ImageReader reader = ImageIO.getImageReadersByFormatName(format(picture)).next();
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(picture))) {
      reader.setInput(in, true, true);
      if (reader.getWidth(0) > mostPixels || reader.getHeight(0) > mostPixels) {
        throw new Logo.RefusedException(Reason.TOO_MANY_PIXELS, null);
      }
      return plain(reader.read(0));
    } catch (Logo.RefusedException refused) {
      throw refused;
    } catch (IOException | RuntimeException damaged) {
      throw new Logo.RefusedException(Reason.DAMAGED, damaged);
    } finally {
      reader.dispose();
    }
  }

  private static String format(byte[] picture) {
    if (picture.length > 2 && (picture[0] & 0xFF) == 0xFF && (picture[1] & 0xFF) == 0xD8) {
      return "jpeg";
    }
    if (picture.length > 4 && (picture[0] & 0xFF) == 0x89 && picture[1] == 'P') {
      return "png";
    }
    throw new Logo.RefusedException(Reason.NOT_A_PICTURE, null);
  }

  /** A PNG of a plain picture. */
  static byte[] png(BufferedImage image) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(image);
    } catch (IOException impossible) {
      throw new IllegalStateException("a picture in memory cannot fail", impossible);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static BufferedImage plain(BufferedImage image) {
    double pixels = (double) image.getWidth() * image.getHeight();
    int step = (int) Math.ceil(Math.sqrt(pixels / MOST_KEPT));
    int width = Math.max(1, image.getWidth() / step);
    int height = Math.max(1, image.getHeight() / step);
    int type =
        image.getColorModel().hasAlpha() ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
    BufferedImage plain = new BufferedImage(width, height, type);
    Pixels source = Pixels.of(image);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        plain.setRGB(x, y, mean(source, image, x * step, y * step, step));
      }
    }
    return plain;
  }

  /** The mean colour of a square of pixels, each counted by how opaque it is. */
  private static int mean(Pixels source, BufferedImage image, int left, int top, int side) {
    long[] sums = new long[4];
    int count = 0;
    for (int y = top; y < Math.min(top + side, image.getHeight()); y++) {
      for (int x = left; x < Math.min(left + side, image.getWidth()); x++) {
        int argb = source.argb(x, y);
        int alpha = argb >>> 24;
        sums[0] += alpha;
        sums[1] += (long) alpha * (argb >> 16 & 0xFF);
        sums[2] += (long) alpha * (argb >> 8 & 0xFF);
        sums[3] += (long) alpha * (argb & 0xFF);
        count++;
      }
    }
    long opaque = Math.max(1, sums[0]);
    return (int) (sums[0] / count) << 24
        | (int) (sums[1] / opaque) << 16
        | (int) (sums[2] / opaque) << 8
        | (int) (sums[3] / opaque);
  }

  /** The colour of a pixel. */
  private interface Pixels {
    int argb(int x, int y);

    /** Grey is taken as it is stored: the machine's grey space would make it lighter. */
    static Pixels of(BufferedImage image) {
      boolean grey =
          image.getColorModel().getNumColorComponents() == 1
              && !(image.getColorModel() instanceof IndexColorModel);
      return grey ? grey(image) : image::getRGB;
    }

    private static Pixels grey(BufferedImage image) {
      Raster raster = image.getRaster();
      int highest = (1 << raster.getSampleModel().getSampleSize(0)) - 1;
      boolean alpha = raster.getNumBands() > 1;
      return (x, y) -> {
        int grey = raster.getSample(x, y, 0) * 255 / highest;
        int opacity = alpha ? raster.getSample(x, y, 1) * 255 / highest : 255;
        return opacity << 24 | grey << 16 | grey << 8 | grey;
      };
    }
  }
}
