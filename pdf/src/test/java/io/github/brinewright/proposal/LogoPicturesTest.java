package io.github.brinewright.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Logo;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pictures that are taken for a logo are drawn, also of kinds that break when drawn as they are.
 */
class LogoPicturesTest {
  private static byte[] png(BufferedImage image) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, "png", bytes);
    return bytes.toByteArray();
  }

  /** One bit for each pixel, one of the two colours transparent. */
  private static byte[] stencil() throws IOException {
    byte[] levels = {(byte) 0x80, 0};
    IndexColorModel palette = new IndexColorModel(1, 2, levels, levels, levels, new byte[] {-1, 0});
    return png(
        new BufferedImage(palette, palette.createCompatibleWritableRaster(30, 20), false, null));
  }

  /** A profile of greys on a picture in colours. */
  private static byte[] wrongProfile() throws IOException {
    byte[] picture = png(new BufferedImage(30, 20, BufferedImage.TYPE_INT_RGB));
    ByteArrayOutputStream data = new ByteArrayOutputStream();
    data.write(new byte[] {'g', 0, 0});
    try (DeflaterOutputStream zip = new DeflaterOutputStream(data)) {
      zip.write(ICC_Profile.getInstance(ColorSpace.CS_GRAY).getData());
    }
    byte[] type = "iCCP".getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(type);
    check.update(data.toByteArray());
    return ByteBuffer.allocate(picture.length + data.size() + 12)
        .put(picture, 0, 33)
        .putInt(data.size())
        .put(type)
        .put(data.toByteArray())
        .putInt((int) check.getValue())
        .put(picture, 33, picture.length - 33)
        .array();
  }

  private static byte[] jpeg() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(30, 20, BufferedImage.TYPE_BYTE_GRAY), "jpg", bytes);
    return bytes.toByteArray();
  }

  static Stream<Arguments> pictures() throws IOException {
    return Stream.of(
        Arguments.of("a stencil", stencil()),
        Arguments.of("a profile of greys on colours", wrongProfile()),
        Arguments.of("a grey JPEG", jpeg()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pictures")
  void anAcceptedPictureIsDrawnInPlainColours(String kind, byte[] picture) throws IOException {
    Dealer dealer = Dealer.named("Weir Street Water").logo(Logo.of("logo.png", picture)).build();
    CarriedJob carried = new CarriedJob("", LocalDate.of(2026, 9, 30), Map.of());

    byte[] pdf = new VisitSheet(dealer, List.of(), Map.of(), carried).toPdf();

    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDResources resources = document.getPage(0).getResources();
      List<PDImageXObject> images = images(resources);
      assertThat(images).hasSize(1);
      assertThat(images.get(0).getWidth()).isEqualTo(30);
      assertThat(images.get(0).getColorSpace().getName()).isEqualTo("DeviceRGB");
      assertThat(images.get(0).getBitsPerComponent()).isEqualTo(8);
      assertThat(images.get(0).getImage()).isNotNull();
    }
  }

  private static List<PDImageXObject> images(PDResources resources) throws IOException {
    List<PDImageXObject> images = new ArrayList<>();
    for (COSName name : resources.getXObjectNames()) {
      if (resources.getXObject(name) instanceof PDImageXObject image) {
        images.add(image);
      }
    }
    return images;
  }
}
