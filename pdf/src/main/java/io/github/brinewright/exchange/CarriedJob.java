package io.github.brinewright.exchange;

import com.fasterxml.jackson.jr.ob.JSON;
import io.github.brinewright.exchange.ReopenException.Reason;
import io.github.brinewright.job.JobFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What a document carries: the files of its job and which home it is about, so that it can be
 * opened again. A site-visit form carries the job without a home.
 *
 * <pre>{@code
 * byte[] json = new CarriedJob("A1", LocalDate.of(2026, 5, 2), files).toJson();
 * CarriedJob again = CarriedJob.fromJson(json);
 * }</pre>
 *
 * @param site id of the home; empty for a form
 * @param date of the document
 * @param files texts of the job by file name; a picture among them as Base64
 */
public record CarriedJob(String site, LocalDate date, Map<String, String> files) {
  /** Name of the attached file. */
  public static final String FILE = "brinewright-job.json";

  /** Version of the data that this library writes, and the newest that it reads. */
  public static final int VERSION = 1;

  /**
   * Keeps its own copy of {@code files}.
   *
   * @param site id of the home; empty for a form
   * @param date of the document
   * @param files texts of the job by file name; a picture among them as Base64
   */
  public CarriedJob {
    files = Map.copyOf(files);
  }

  /** {@return whether it came with a form, which is about no home until it is filled} */
  public boolean ofForm() {
    return site.isEmpty();
  }

  /** {@return the data as JSON in UTF-8, the same for the same job} */
  public byte[] toJson() {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("version", VERSION);
    if (!site.isEmpty()) {
      fields.put("site", site);
    }
    fields.put("date", date.toString());
    fields.put("files", ordered());
    try {
      return JSON.std.with(JSON.Feature.PRETTY_PRINT_OUTPUT).asBytes(fields);
    } catch (IOException impossible) {
      throw new UncheckedIOException("texts in memory cannot fail", impossible);
    }
  }

  private Map<String, String> ordered() {
    Map<String, String> ordered = new LinkedHashMap<>();
    JobFiles.NAMES.stream()
        .filter(files::containsKey)
        .forEach(name -> ordered.put(name, files.get(name)));
    new TreeMap<>(files).forEach(ordered::putIfAbsent);
    return ordered;
  }

  /**
   * Reads what {@link #toJson} wrote.
   *
   * @param json in UTF-8
   * @return the data
   * @throws ReopenException with {@link Reason#NEWER_VERSION} when a newer library wrote it, with
   *     {@link Reason#MALFORMED_DATA} when it is not such data
   */
  public static CarriedJob fromJson(byte[] json) throws ReopenException {
    Map<?, ?> fields = parsed(json);
    if (!(fields.get("version") instanceof Number version)) {
      throw malformed("the data name no version", null);
    }
    if (version.doubleValue() > VERSION) {
      throw new ReopenException(
          Reason.NEWER_VERSION,
          "the data are of version " + version + "; the newest known is " + VERSION,
          null);
    }
    if (version.doubleValue() != VERSION || !(fields.get("files") instanceof Map<?, ?> texts)) {
      throw malformed("the data are of version " + version + " or have no files", null);
    }
    Map<String, String> files = new LinkedHashMap<>();
    texts.forEach((name, text) -> files.put(String.valueOf(name), String.valueOf(text)));
    return new CarriedJob(text(fields, "site"), date(fields), files);
  }

  private static Map<?, ?> parsed(byte[] json) throws ReopenException {
    try {
      if (JSON.std.anyFrom(new String(json, StandardCharsets.UTF_8)) instanceof Map<?, ?> fields) {
        return fields;
      }
    } catch (IOException notJson) {
      throw malformed("the data are not JSON", notJson);
    }
    throw malformed("the data are not a JSON object", null);
  }

  private static LocalDate date(Map<?, ?> fields) throws ReopenException {
    try {
      return LocalDate.parse(text(fields, "date"));
    } catch (DateTimeException notIso) {
      throw malformed("the data have no date", notIso);
    }
  }

  private static String text(Map<?, ?> fields, String name) {
    return fields.get(name) instanceof String text ? text : "";
  }

  private static ReopenException malformed(String details, @Nullable Throwable cause) {
    return new ReopenException(Reason.MALFORMED_DATA, details, cause);
  }
}
