package io.github.brinewright.internal.document;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.DiagonalMatrix;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Makes the colour profile that documents embed: a matrix and three curves by ICC.1:2004-10
 * (profile version 4.2), from the primaries, the white and the curve of IEC 61966-2-1, adapted to
 * the white of the profile connection space by the Bradford transform.
 */
final class SrgbProfile {
  /** Chromaticities x, y of red, green, blue (IEC 61966-2-1, which takes them from BT.709). */
  private static final double[][] PRIMARIES = {{0.64, 0.33}, {0.30, 0.60}, {0.15, 0.06}};

  /** D65 (IEC 61966-2-1). */
  private static final double[] WHITE = {0.3127, 0.3290};

  /** D50 as ICC.1, section 7.2.16, writes it. */
  private static final double[] PCS_WHITE = {0.9642, 1, 0.8249};

  /** Linear Bradford matrix (ICC.1, annex E). */
  private static final RealMatrix BRADFORD =
      new Array2DRowRealMatrix(
          new double[][] {
            {0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}
          });

  /** Of a linear signal below and above the break: IEC 61966-2-1 as function type 3 of ICC.1. */
  private static final double[] CURVE = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};

  private static final int HEADER = 128;

  private SrgbProfile() {}

  /** Writes the profile that the library ships. */
  public static void main(String[] args) throws IOException {
    Files.write(
        Path.of("src/main/resources/io/github/brinewright/internal/document/srgb.icc"), bytes());
  }

  private static double[] xyz(double[] chromaticity) {
    double x = chromaticity[0];
    double y = chromaticity[1];
    return new double[] {x / y, 1, (1 - x - y) / y};
  }

  private static RealMatrix adaptation() {
    double[] from = BRADFORD.operate(xyz(WHITE));
    double[] to = BRADFORD.operate(PCS_WHITE);
    double[] scale = {to[0] / from[0], to[1] / from[1], to[2] / from[2]};
    return MatrixUtils.inverse(BRADFORD).multiply(new DiagonalMatrix(scale)).multiply(BRADFORD);
  }

  /** Columns: red, green and blue under the white of the connection space. */
  static RealMatrix colorants() {
    RealMatrix primaries = new Array2DRowRealMatrix(3, 3);
    for (int i = 0; i < 3; i++) {
      primaries.setColumn(i, xyz(PRIMARIES[i]));
    }
    double[] sums = MatrixUtils.inverse(primaries).operate(xyz(WHITE));
    return adaptation().multiply(primaries.multiply(new DiagonalMatrix(sums)));
  }

  static byte[] bytes() {
    Map<String, byte[]> tags = new LinkedHashMap<>();
    tags.put("desc", text("sRGB by IEC 61966-2-1"));
    tags.put("cprt", text("Made by the Brinewright authors; free for any use"));
    tags.put("wtpt", numbers("XYZ ", PCS_WHITE));
    double[][] rows = adaptation().getData();
    tags.put(
        "chad", numbers("sf32", Arrays.stream(rows).flatMapToDouble(Arrays::stream).toArray()));
    tags.put("rXYZ", numbers("XYZ ", colorants().getColumn(0)));
    tags.put("gXYZ", numbers("XYZ ", colorants().getColumn(1)));
    tags.put("bXYZ", numbers("XYZ ", colorants().getColumn(2)));
    tags.put("rTRC", curve());
    return profile(tags);
  }

  private static byte[] profile(Map<String, byte[]> elements) {
    List<String> names = List.of("rTRC", "gTRC", "bTRC");
    int entries = elements.size() + names.size() - 1;
    int at = HEADER + 4 + 12 * entries;
    int size = at + elements.values().stream().mapToInt(element -> element.length).sum();
    ByteBuffer out = ByteBuffer.allocate(size);
    header(out, size);
    out.putInt(entries);
    for (Map.Entry<String, byte[]> element : elements.entrySet()) {
      for (String name : element.getKey().equals("rTRC") ? names : List.of(element.getKey())) {
        out.put(ascii(name)).putInt(at).putInt(element.getValue().length);
      }
      at += element.getValue().length;
    }
    elements.values().forEach(out::put);
    return out.array();
  }

  /** ICC.1, section 7.2. */
  private static void header(ByteBuffer out, int size) {
    out.putInt(size).putInt(0).putInt(0x04200000);
    out.put(ascii("mntrRGB XYZ "));
    for (int part : new int[] {2026, 1, 1, 0, 0, 0}) {
      out.putShort((short) part);
    }
    out.put(ascii("acsp"));
    out.position(68);
    for (double value : PCS_WHITE) {
      out.putInt(fixed(value));
    }
    out.position(HEADER);
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  /** A number as s15Fixed16. */
  private static int fixed(double value) {
    return (int) Math.round(value * 65536);
  }

  private static byte[] numbers(String type, double[] values) {
    ByteBuffer out = ByteBuffer.allocate(8 + 4 * values.length);
    out.put(ascii(type)).putInt(0);
    for (double value : values) {
      out.putInt(fixed(value));
    }
    return out.array();
  }

  /** A parametric curve of function type 3. */
  private static byte[] curve() {
    ByteBuffer out = ByteBuffer.allocate(12 + 4 * CURVE.length);
    out.put(ascii("para")).putInt(0).putShort((short) 3).putShort((short) 0);
    for (double value : CURVE) {
      out.putInt(fixed(value));
    }
    return out.array();
  }

  /** A text in US English, filled up to a multiple of four bytes. */
  private static byte[] text(String text) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.writeBytes("mluc");
      out.writeInt(0);
      out.writeInt(1);
      out.writeInt(12);
      out.writeBytes("enUS");
      out.writeInt(2 * text.length());
      out.writeInt(28);
      out.writeChars(text);
      out.write(new byte[(4 - out.size() % 4) % 4]);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    return bytes.toByteArray();
  }
}
