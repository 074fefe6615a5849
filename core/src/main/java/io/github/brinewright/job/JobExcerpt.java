package io.github.brinewright.job;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.CSVWriter;
import com.opencsv.RFC4180ParserBuilder;
import com.opencsv.exceptions.CsvException;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The files of a job with one home alone: nothing of the other customers is passed on. */
public final class JobExcerpt {
  private static final String SITES = SiteReader.SHAPE.file();

  private JobExcerpt() {}

  /**
   * The files of a job by name, sites.csv with its header and the row of one home.
   *
   * @param files of the job, free of errors in that row
   * @param siteId id of the home
   * @throws IOException when a file cannot be read
   */
  public static Map<String, String> of(JobFiles files, String siteId) throws IOException {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String name : JobFiles.NAMES) {
      Optional<String> text =
          files.has(name) ? TextFile.read(files, name, new ArrayList<>()) : Optional.empty();
      if (text.isPresent()) {
        texts.put(name, name.equals(SITES) ? oneHome(text.get(), siteId) : text.get());
      }
    }
    Optional<Logo> logo = DealerReader.read(files, new ArrayList<>()).dealer().logo();
    logo.ifPresent(
        picture ->
            texts.put(picture.file(), Base64.getEncoder().encodeToString(picture.content())));
    return texts;
  }

  private static String oneHome(String text, String siteId) throws IOException {
    StringWriter out = new StringWriter();
    try (CSVReader in =
            new CSVReaderBuilder(new StringReader(text))
                .withCSVParser(new RFC4180ParserBuilder().build())
                .build();
        CSVWriter csv = new CSVWriter(out)) {
      List<String[]> rows = in.readAll();
      List<String> header = Arrays.stream(rows.get(0)).map(String::strip).toList();
      int id = header.indexOf("site_id");
      csv.writeNext(rows.get(0), false);
      rows.stream()
          .skip(1)
          .filter(row -> row.length > id && row[id].strip().equals(siteId))
          .forEach(row -> csv.writeNext(row, false));
    } catch (CsvException malformed) {
      throw new IOException(SITES + " cannot be read: " + malformed.getMessage(), malformed);
    }
    return out.toString();
  }
}
