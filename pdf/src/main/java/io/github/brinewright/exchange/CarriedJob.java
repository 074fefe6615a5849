package io.github.brinewright.exchange;

import com.fasterxml.jackson.jr.ob.JSON;
import io.github.brinewright.job.JobFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a document carries: the files of its job and which home it is about, so that it can be
 * opened again. A site-visit form carries the job without a home.
 *
 * @param site id of the home; empty for a form
 * @param date of the document
 * @param files texts of the job by file name
 */
public record CarriedJob(Optional<String> site, LocalDate date, Map<String, String> files) {
  /** Name of the attached file. */
  public static final String FILE = "brinewright-job.json";

  private static final int VERSION = 1;

  /** Keeps its own copy of {@code files}. */
  public CarriedJob {
    files = Map.copyOf(files);
  }

  /** The data as JSON, the same for the same job. */
  public byte[] toJson() throws IOException {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("version", VERSION);
    site.ifPresent(id -> fields.put("site", id));
    fields.put("date", date.toString());
    Map<String, String> ordered = new LinkedHashMap<>();
    JobFiles.NAMES.stream()
        .filter(files::containsKey)
        .forEach(name -> ordered.put(name, files.get(name)));
    new TreeMap<>(files).forEach(ordered::putIfAbsent);
    fields.put("files", ordered);
    return JSON.std.with(JSON.Feature.PRETTY_PRINT_OUTPUT).asBytes(fields);
  }

  /**
   * Reads what {@link #toJson} wrote.
   *
   * @throws IOException when it is not such data
   */
  public static CarriedJob fromJson(byte[] json) throws IOException {
    Map<String, Object> fields = JSON.std.mapFrom(new String(json, StandardCharsets.UTF_8));
    if (!Integer.valueOf(VERSION).equals(fields.get("version"))
        || !(fields.get("date") instanceof String date)
        || !(fields.get("files") instanceof Map<?, ?> texts)) {
      throw new IOException("the data in the document is not of a version that can be read");
    }
    Map<String, String> files = new LinkedHashMap<>();
    texts.forEach((name, text) -> files.put(String.valueOf(name), String.valueOf(text)));
    try {
      Optional<String> site = Optional.ofNullable(fields.get("site")).map(String::valueOf);
      return new CarriedJob(site, LocalDate.parse(date), files);
    } catch (DateTimeException malformed) {
      throw new IOException("the data in the document has no date", malformed);
    }
  }
}
