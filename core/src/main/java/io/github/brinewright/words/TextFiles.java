package io.github.brinewright.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Texts in files of properties, one a language: <code>texts.properties</code> in English, <code>
 * texts_fr.properties</code> in French. In UTF-8, read once.
 *
 * <p>Whoever has the files opens them: so they are found inside a module, in an executable jar, and
 * from any thread.
 */
public final class TextFiles implements Texts {
  /** How a file beside the caller's own classes is opened. */
  @FunctionalInterface
  public interface Opener {
    /**
     * {@return the file, or null when there is none of that name}
     *
     * @param file name of the file, without a folder
     */
    @Nullable InputStream open(String file);
  }

  private static final String FIRST = "en";

  private final String name;
  private final List<String> languages;
  private final Opener opener;
  private final Map<String, Map<String, String>> read = new ConcurrentHashMap<>();

  /**
   * Texts beside the caller's classes.
   *
   * @param name of the files without ending
   * @param languages besides English, as codes of ISO 639
   * @param opener as {@code file -> Here.class.getResourceAsStream(file)}
   */
  public TextFiles(String name, List<String> languages, Opener opener) {
    this.name = name;
    this.languages = List.copyOf(languages);
    this.opener = opener;
  }

  /**
   * The texts of a locale's language.
   *
   * @throws IllegalStateException when the file of a language named is not there
   */
  @Override
  public Map<String, String> in(Locale locale) {
    String language = locale.getLanguage();
    return language.equals(FIRST) || languages.contains(language)
        ? read.computeIfAbsent(language, this::read)
        : Map.of();
  }

  private Map<String, String> read(String language) {
    String file = name + (language.equals(FIRST) ? "" : "_" + language) + ".properties";
    try (InputStream in = opener.open(file)) {
      if (in == null) {
        throw new IllegalStateException("the texts " + file + " are not there");
      }
      Properties texts = new Properties();
      texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      return texts.stringPropertyNames().stream()
          .collect(Collectors.toUnmodifiableMap(key -> key, texts::getProperty));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
