package io.github.brinewright.internal.section;

import io.github.brinewright.words.TextFiles;
import io.github.brinewright.words.Texts;
import java.util.List;

/** The texts of the sections. */
public final class SectionTexts {
  /** In every language that we write in. */
  public static final Texts TEXTS =
      new TextFiles(
          "texts", List.of("es", "fr"), file -> SectionTexts.class.getResourceAsStream(file));

  private SectionTexts() {}
}
