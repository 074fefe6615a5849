package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.job.Logo.Reason;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LogoTest {
  private static final int GREY = 0x80;

  private static byte[] encoded(BufferedImage image, String format) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    assertThat(ImageIO.write(image, format, bytes)).isTrue();
    return bytes.toByteArray();
  }

  private static BufferedImage filled(BufferedImage image) {
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        image.setRGB(x, y, 0xFF804020);
      }
    }
    return image;
  }

  private static BufferedImage of(int type) {
    return filled(new BufferedImage(30, 20, type));
  }

  /** 16 bits a colour. */
  private static BufferedImage deep(int bands) {
    ColorSpace space = ColorSpace.getInstance(bands < 3 ? ColorSpace.CS_GRAY : ColorSpace.CS_sRGB);
    boolean alpha = bands % 2 == 0;
    ColorModel model =
        new ComponentColorModel(
            space,
            alpha,
            false,
            alpha ? ColorModel.TRANSLUCENT : ColorModel.OPAQUE,
            DataBuffer.TYPE_USHORT);
    WritableRaster raster = model.createCompatibleWritableRaster(30, 20);
    return filled(new BufferedImage(model, raster, false, null));
  }

  private static BufferedImage indexed(int bits) {
    byte[] levels = {(byte) 0x80, 0};
    IndexColorModel model =
        new IndexColorModel(bits, 2, levels, levels, levels, new byte[] {(byte) 0xFF, 0});
    WritableRaster raster = model.createCompatibleWritableRaster(30, 20);
    return new BufferedImage(model, raster, false, null);
  }

  static Stream<Arguments> kinds() {
    return Stream.of(
        Arguments.of("red, green, blue", of(BufferedImage.TYPE_INT_RGB), false),
        Arguments.of("with alpha", of(BufferedImage.TYPE_INT_ARGB), true),
        Arguments.of("grey", of(BufferedImage.TYPE_BYTE_GRAY), false),
        Arguments.of("black and white", of(BufferedImage.TYPE_BYTE_BINARY), false),
        Arguments.of("of a palette", of(BufferedImage.TYPE_BYTE_INDEXED), true),
        Arguments.of("1 bit with a transparent colour", indexed(1), true),
        Arguments.of("4 bits with a transparent colour", indexed(4), true),
        Arguments.of("grey of 16 bits", deep(1), false),
        Arguments.of("grey of 16 bits with alpha", deep(2), true),
        Arguments.of("16 bits", deep(3), false),
        Arguments.of("16 bits with alpha", deep(4), true));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("kinds")
  void everyKindOfPngIsKeptInOnePlainKind(String kind, BufferedImage image, boolean mayHaveAlpha)
      throws IOException {
    Logo logo = Logo.of("logo.png", encoded(image, "png"));

    BufferedImage kept = ImageIO.read(new ByteArrayInputStream(logo.content()));
    assertThat(kept.getColorModel().getComponentSize())
        .as("bits a colour; with alpha there is a fourth")
        .isEqualTo(kept.getColorModel().hasAlpha() ? new int[] {8, 8, 8, 8} : new int[] {8, 8, 8});
    assertThat(kept.getColorModel().getColorSpace().isCS_sRGB()).isTrue();
    assertThat(logo.width()).isEqualTo(30);
    assertThat(logo.height()).isEqualTo(20);
    assertThat(kept.getColorModel().hasAlpha()).isEqualTo(mayHaveAlpha && hasAlpha(image));
    assertThat(Logo.of("logo.png", logo.content())).as("read again").isEqualTo(logo);
  }

  private static boolean hasAlpha(BufferedImage image) {
    return image.getColorModel().hasAlpha();
  }

  @Test
  void coloursStayWhatTheyAre() throws IOException {
    BufferedImage grey = new BufferedImage(3, 2, BufferedImage.TYPE_BYTE_GRAY);
    grey.getRaster().setSamples(0, 0, 3, 2, 0, new int[] {GREY, GREY, GREY, GREY, GREY, GREY});
    BufferedImage half = new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB);
    half.setRGB(0, 0, 0x80402010);

    assertThat(pixel(Logo.of("g.png", encoded(grey, "png")))).isEqualTo(0xFF808080);
    assertThat(pixel(Logo.of("h.png", encoded(half, "png")))).isEqualTo(0x80402010);
    assertThat(pixel(Logo.of("i.png", encoded(indexed(4), "png")))).isEqualTo(0xFF808080);
    assertThat(pixel(Logo.of("r.png", encoded(deep(3), "png")))).isEqualTo(0xFF804020);
  }

  private static int pixel(Logo logo) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(logo.content())).getRGB(0, 0);
  }

  @Test
  void aLargePictureIsKeptSmaller() throws IOException {
    BufferedImage image = filled(new BufferedImage(3_000, 1_000, BufferedImage.TYPE_INT_RGB));

    Logo logo = Logo.of("logo.jpg", encoded(image, "jpg"));

    assertThat(logo.width() * logo.height()).isBetween(100_000, 400_000);
    assertThat((double) logo.width() / logo.height()).isBetween(2.9, 3.1);
    assertThat(pixel(logo) >> 16 & 0xFF).as("red, but for the loss of JPEG").isBetween(125, 131);
    assertThat(Logo.of("logo.jpg", logo.content())).isEqualTo(logo);
  }

  /** PNG, 13.2: a chunk whose check does not fit is damaged; one that colours hang on is not. */
  @Test
  void chunksThatOthersStumbleOverAreLeftOut() throws IOException {
    byte[] png = encoded(of(BufferedImage.TYPE_INT_RGB), "png");
    byte[] profile = chunk("iCCP", new byte[] {'x', 0, 0, 1, 2, 3});
    byte[] odd = withChunk(png, profile);

    assertThat(Logo.of("logo.png", odd)).isEqualTo(Logo.of("logo.png", png));
  }

  private static byte[] chunk(String type, byte[] data) {
    ByteBuffer bytes = ByteBuffer.allocate(12 + data.length);
    bytes.putInt(data.length).put(type.getBytes(StandardCharsets.US_ASCII));
    bytes.put(data).putInt(0x12345678);
    return bytes.array();
  }

  /** A chunk after the header, which takes 33 bytes. */
  private static byte[] withChunk(byte[] png, byte[] chunk) {
    ByteBuffer bytes = ByteBuffer.allocate(png.length + chunk.length);
    bytes.put(png, 0, 33).put(chunk).put(png, 33, png.length - 33);
    return bytes.array();
  }

  private static void refused(byte[] picture, Reason reason) {
    assertThatThrownBy(() -> Logo.of("logo.png", picture))
        .isInstanceOfSatisfying(
            Logo.RefusedException.class, refused -> assertThat(refused.reason()).isEqualTo(reason));
  }

  @Test
  void eachRefusalHasItsReason() throws IOException {
    byte[] png = encoded(of(BufferedImage.TYPE_INT_RGB), "png");
    byte[] jpeg = encoded(of(BufferedImage.TYPE_INT_RGB), "jpg");

    refused(new byte[Logo.MOST_BYTES + 1], Reason.TOO_LARGE);
    refused(new byte[0], Reason.NOT_A_PICTURE);
    refused("GIF89a".getBytes(StandardCharsets.US_ASCII), Reason.NOT_A_PICTURE);
    refused(Arrays.copyOf(png, 60), Reason.DAMAGED);
    refused(Arrays.copyOf(jpeg, 30), Reason.DAMAGED);
    refused(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}, Reason.DAMAGED);
  }

  /** A header alone: 100,000 by 100,000 pixels would take 40 GB. */
  @Test
  void theSizeIsReadFromTheHeaderBeforeAnyPixel() throws IOException {
    byte[] png = encoded(of(BufferedImage.TYPE_INT_RGB), "png");
    ByteBuffer.wrap(png).putInt(16, 100_000).putInt(20, 100_000);

    refused(png, Reason.TOO_MANY_PIXELS);
    refused(
        encoded(new BufferedImage(Logo.MOST_PIXELS + 1, 1, BufferedImage.TYPE_BYTE_GRAY), "png"),
        Reason.TOO_MANY_PIXELS);
    assertThat(
            Logo.of(
                    "w.png",
                    encoded(
                        new BufferedImage(Logo.MOST_PIXELS, 1, BufferedImage.TYPE_BYTE_GRAY),
                        "png"))
                .width())
        .isEqualTo(Logo.MOST_PIXELS);
  }

  /** As in a container that may write nowhere: there ImageIO fails, which keeps a file. */
  @Test
  void aGoodLogoIsTakenWhereNothingCanBeWritten(@TempDir Path folder) throws IOException {
    byte[] png = encoded(of(BufferedImage.TYPE_INT_ARGB), "png");
    Path gone = Files.createDirectory(folder.resolve("gone"));
    File before = ImageIO.getCacheDirectory();
    try {
      ImageIO.setCacheDirectory(gone.toFile());
      Files.delete(gone);
      assertThatThrownBy(() -> ImageIO.read(new ByteArrayInputStream(png)))
          .isInstanceOf(Exception.class);

      assertThat(Logo.of("logo.png", png).width()).isEqualTo(30);
    } finally {
      ImageIO.setCacheDirectory(before);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "fr"})
  void aPictureThatIsRefusedIsExplainedWithTheKey(String tag) {
    JobFiles files =
        JobFiles.of(
            Map.of(
                "sites.csv",
                "site_id,hardness_gpg,people\nA,18,3\n",
                "dealer.properties",
                "logo=logo.png\n",
                "logo.png",
                "bm90IGEgcGljdHVyZQ=="));

    assertThat(JobFolder.read(files).problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.code()).isEqualTo(ProblemCode.NOT_A_PICTURE);
              assertThat(new ProblemWords(Locale.forLanguageTag(tag)).say(problem))
                  .contains("dealer.properties", "logo", "PNG", "JPEG");
            });
  }
}
