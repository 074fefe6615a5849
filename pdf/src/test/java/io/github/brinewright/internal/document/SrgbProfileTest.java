package io.github.brinewright.internal.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SrgbProfileTest {
  private static byte[] shipped() throws IOException {
    try (InputStream in = SrgbProfile.class.getResourceAsStream("srgb.icc")) {
      return Objects.requireNonNull(in).readAllBytes();
    }
  }

  @Test
  void theShippedProfileIsTheOneMadeHere() throws IOException {
    assertThat(shipped()).isEqualTo(SrgbProfile.bytes());
  }

  /**
   * Colorants of sRGB under D50: sRGB profiles of the International Color Consortium (from memory).
   * They rest on other roundings of the white D65, whose Z differs by 2.3 parts in 10,000.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0.4361, 0.2225, 0.0139",
    "1, 0.3851, 0.7169, 0.0971",
    "2, 0.1431, 0.0606, 0.7141"
  })
  void theColorantsAreThePublishedOnes(int column, double x, double y, double z) {
    double[] colorant = SrgbProfile.colorants().getColumn(column);
    assertThat(colorant[0]).isCloseTo(x, within(2.3e-4));
    assertThat(colorant[1]).isCloseTo(y, within(2.3e-4));
    assertThat(colorant[2]).isCloseTo(z, within(2.3e-4));
  }

  /** The same colour through it and through Java's own, to little more than a step of 8 bits. */
  @ParameterizedTest
  @CsvSource({"0, 0, 0", "1, 1, 1", "0.5, 0.5, 0.5", "0.02, 0.9, 0.3", "0.1, 0.35, 0.6"})
  void aColourIsTheSameAsByJavasProfile(float red, float green, float blue) throws IOException {
    float[] colour = {red, green, blue};
    float[] back = new ICC_ColorSpace(ICC_Profile.getInstance(shipped())).toRGB(colour);
    assertThat(back).containsExactly(colour, within(0.0045f));
  }
}
