package io.github.brinewright.proposal;

import io.github.brinewright.home.Fixture;
import io.github.brinewright.internal.document.PdfReader;
import io.github.brinewright.internal.section.VisitForm;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.SiteCells;
import java.io.IOException;
import java.text.DecimalFormatSymbols;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What was filled into the form of a site visit.
 *
 * @param cells of sites.csv, by column
 * @param labels of the fields, by column
 */
public record FilledVisit(Map<String, String> cells, Map<String, String> labels) {
  private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,\\d+");
  private static final Pattern COLUMN = Pattern.compile("[a-z]+(_[a-z]+)+");
  private static final List<String> NEEDED = List.of("site_id", "hardness_gpg", "people");
  private static final Set<String> TEXTS = Set.of("site_id", "customer", "street", "town");

  /** Keeps its own copies of the maps. */
  public FilledVisit {
    cells = Map.copyOf(cells);
    labels = Map.copyOf(labels);
  }

  /**
   * Reads a form that {@link VisitSheet} wrote and somebody filled. Where the form is in a language
   * that writes decimals with a comma, a comma is taken for one. A field that a form lacks, as one
   * written before the field was known, is taken for blank.
   *
   * @return empty when the document has no such fields, as after printing it to a new file
   * @throws IOException when the bytes are not a PDF
   */
  public static Optional<FilledVisit> read(byte[] pdf) throws IOException {
    PdfReader.FilledFields form = PdfReader.fields(pdf);
    Map<String, PdfReader.Filled> fields = form.fields();
    if (!fields.containsKey(NEEDED.get(0))) {
      return Optional.empty();
    }
    boolean comma = DecimalFormatSymbols.getInstance(form.language()).getDecimalSeparator() == ',';
    Map<String, String> cells = new LinkedHashMap<>();
    Map<String, String> labels = new LinkedHashMap<>();
    for (String column : SiteCells.columns()) {
      PdfReader.Filled field = fields.get(column);
      if (field != null) {
        String value = field.value().strip();
        cells.put(column, comma && !TEXTS.contains(column) ? withPoint(value) : value);
        labels.put(column, field.label());
      }
    }
    cells.put(VisitForm.FIXTURES, fixtures(fields));
    return Optional.of(new FilledVisit(cells, labels));
  }

  private static String withPoint(String value) {
    return COMMA.matcher(value).matches() ? value.replace(',', '.') : value;
  }

  private static String fixtures(Map<String, PdfReader.Filled> fields) {
    StringBuilder all = new StringBuilder();
    for (Fixture fixture : Fixture.values()) {
      PdfReader.Filled field = fields.get(VisitForm.nameOf(fixture));
      String count = field == null ? "" : field.value().strip();
      if (!count.isEmpty() && !count.equals("0")) {
        all.append(' ').append(count).append(' ').append(SiteCells.word(fixture));
      }
    }
    return all.toString().strip();
  }

  /** The text of a sites.csv with this home. */
  public String csv() {
    return SiteCells.csv(cells);
  }

  /**
   * A problem with a cell as a problem with its field.
   *
   * @param file of the form
   */
  public String describe(Problem problem, String file) {
    if (!problem.file().equals(SiteCells.FILE)) {
      return problem.toString();
    }
    if (cells.values().stream().allMatch(String::isEmpty)) {
      return file + ": nothing is filled in; needed are " + needed();
    }
    String label = labels.getOrDefault(problem.column(), problem.column());
    String field = label.isEmpty() ? "" : ", field \"" + label + "\"";
    String value = problem.value().isEmpty() ? "" : "\"" + problem.value() + "\" ";
    return file + field + ": " + value + inOwnWords(problem.advice());
  }

  private String inOwnWords(String advice) {
    return COLUMN
        .matcher(advice)
        .replaceAll(
            name -> {
              String label = labels.get(name.group());
              return Matcher.quoteReplacement(label == null ? name.group() : "\"" + label + "\"");
            });
  }

  private String needed() {
    return NEEDED.stream()
        .map(column -> "\"" + labels.get(column) + "\"")
        .collect(Collectors.joining(", "));
  }
}
