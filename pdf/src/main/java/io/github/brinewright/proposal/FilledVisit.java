package io.github.brinewright.proposal;

import io.github.brinewright.home.Fixture;
import io.github.brinewright.internal.document.PdfReader;
import io.github.brinewright.internal.section.VisitForm;
import io.github.brinewright.job.Column;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.ProblemWords;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.job.SiteColumns;
import java.io.IOException;
import java.text.DecimalFormatSymbols;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What was filled into the form of a site visit.
 *
 * @param cells of sites.csv, by column
 * @param labels of the fields, by column
 * @param language of the form
 */
public record FilledVisit(Map<String, String> cells, Map<String, String> labels, Locale language) {
  private static final Pattern COMMA = Pattern.compile("(?:<\\s*)?[+-]?\\d+,\\d+");
  private static final Pattern COUNTER = Pattern.compile("(:\\d+),(\\d+)(?=\\s|$)");
  private static final List<String> NEEDED = List.of("site_id", "hardness_gpg", "people");

  /**
   * Keeps its own copies of the maps.
   *
   * @param cells of sites.csv, by column
   * @param labels of the fields, by column
   * @param language of the form
   */
  public FilledVisit {
    cells = Map.copyOf(cells);
    labels = Map.copyOf(labels);
  }

  /**
   * Reads a form that {@link VisitSheet} wrote and somebody filled. Where the form is in a language
   * that writes decimals with a comma, a comma is taken for one. A field that a form lacks, as one
   * written before the field was known, is taken for blank.
   *
   * @param pdf the bytes of the file
   * @return empty when the document has no such fields, as after printing it to a new file
   * @throws IOException when the bytes are not a PDF
   */
  public static Optional<FilledVisit> read(byte[] pdf) throws IOException {
    PdfReader.FilledFields form = PdfReader.fields(pdf);
    Map<String, PdfReader.Filled> fields = form.fields();
    if (!fields.containsKey(NEEDED.get(0))) {
      return Optional.empty();
    }
    Map<String, String> labels = new LinkedHashMap<>();
    Map<String, String> values = new LinkedHashMap<>();
    fields.forEach(
        (name, field) -> {
          values.put(name, field.value());
          labels.put(name, field.label());
        });
    labels.keySet().retainAll(SiteColumns.all().stream().map(Column::name).toList());
    return Optional.of(new FilledVisit(cells(values, form.language()), labels, form.language()));
  }

  /**
   * {@return the cells of sites.csv that the fields of a visit stand for} Where a decimal is
   * written with a comma in that language, a comma is taken for one.
   *
   * @param fields what stands in them, by the names that {@link VisitSheet} gives them; a column
   *     without a field gets no cell
   * @param language that the fields were filled in
   */
  public static Map<String, String> cells(Map<String, String> fields, Locale language) {
    boolean comma = DecimalFormatSymbols.getInstance(language).getDecimalSeparator() == ',';
    Map<String, String> cells = new LinkedHashMap<>();
    for (Column column : SiteColumns.all()) {
      String field = fields.get(column.name());
      if (field != null) {
        String value = field.strip();
        cells.put(column.name(), comma ? withPoint(column.kind(), value) : value);
      }
    }
    cells.put(VisitForm.FIXTURES, fixtures(fields));
    return cells;
  }

  private static String withPoint(Column.Kind kind, String value) {
    if (kind == Column.Kind.READINGS) {
      return COUNTER.matcher(value).replaceAll("$1.$2");
    }
    return kind.numeric() && COMMA.matcher(value).matches() ? value.replace(',', '.') : value;
  }

  private static String fixtures(Map<String, String> fields) {
    StringBuilder all = new StringBuilder();
    for (Fixture fixture : Fixture.values()) {
      String count = fields.getOrDefault(VisitForm.nameOf(fixture), "").strip();
      if (!count.isEmpty() && !count.equals("0")) {
        all.append(' ').append(count).append(' ').append(SiteCells.word(fixture));
      }
    }
    return all.toString().strip();
  }

  /** {@return the text of a sites.csv with this home} */
  public String csv() {
    return SiteCells.csv(cells);
  }

  /**
   * {@return a problem with a cell as a problem with its field, in the language of the form}
   *
   * @param problem with a cell of {@link #csv}
   * @param file of the form
   */
  public String describe(Problem problem, String file) {
    ProblemWords words = new ProblemWords(language);
    if (!problem.file().equals(SiteCells.FILE)) {
      return words.say(problem);
    }
    return cells.values().stream().allMatch(String::isEmpty)
        ? words.nothingFilled(file, needed())
        : words.sayOfForm(problem, file, labels);
  }

  private String needed() {
    return NEEDED.stream()
        .map(column -> "\"" + labels.get(column) + "\"")
        .collect(Collectors.joining(", "));
  }
}
