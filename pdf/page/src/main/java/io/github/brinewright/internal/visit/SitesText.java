package io.github.brinewright.internal.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The text of sites.csv, of which one row is written anew and all others stay byte for byte:
 * quotes, order of columns and line endings too. A column that is not there yet is added at the
 * end, of the other rows empty.
 */
final class SitesText {
  private static final String ID = "site_id";
  private static final String MARK = "\uFEFF";

  private final String mark;
  private final List<Record> records;
  private final List<String> header;
  private final String ending;

  /** A line of the file as it is written, with its ending. */
  private record Record(List<String> raw, String ending) {
    String text() {
      return String.join(",", raw) + ending;
    }

    String value(int column) {
      return column < raw.size() ? CsvCell.value(raw.get(column)) : "";
    }

    boolean isBlank() {
      return raw.stream().allMatch(cell -> CsvCell.value(cell).isBlank());
    }
  }

  SitesText(String text) {
    mark = text.startsWith(MARK) ? MARK : "";
    records = split(text.substring(mark.length()));
    header = new ArrayList<>();
    if (!records.isEmpty()) {
      records.get(0).raw().forEach(cell -> header.add(CsvCell.value(cell)));
    }
    ending =
        records.isEmpty() || records.get(0).ending().isEmpty() ? "\n" : records.get(0).ending();
  }

  private static List<Record> split(String text) {
    List<Record> records = new ArrayList<>();
    List<String> raw = new ArrayList<>();
    boolean quoted = false;
    int begin = 0;
    for (int i = 0; i < text.length(); i++) {
      char letter = text.charAt(i);
      if (letter == '"') {
        quoted = !quoted;
      } else if (!quoted && letter == ',') {
        raw.add(text.substring(begin, i));
        begin = i + 1;
      } else if (!quoted && (letter == '\n' || letter == '\r')) {
        int end = letter == '\r' && text.startsWith("\r\n", i) ? i + 2 : i + 1;
        raw.add(text.substring(begin, i));
        records.add(new Record(raw, text.substring(i, end)));
        raw = new ArrayList<>();
        begin = end;
        i = end - 1;
      }
    }
    if (begin < text.length() || !raw.isEmpty()) {
      raw.add(text.substring(begin));
      records.add(new Record(raw, ""));
    }
    return records;
  }

  /**
   * The text with a row written anew.
   *
   * @param siteId of the row; one that no row has is added at the end
   * @param cells of the row by column
   * @param order of columns that are not there yet
   */
  String with(String siteId, Map<String, String> cells, List<String> order) {
    List<String> added =
        order.stream().filter(name -> cells.containsKey(name) && !header.contains(name)).toList();
    int row = rowOf(siteId);
    StringBuilder text = new StringBuilder(mark).append(heading(added));
    for (int i = 1; i < records.size(); i++) {
      text.append(i == row ? written(records.get(i), cells, added) : wider(records.get(i), added));
    }
    if (row < 0) {
      if (text.charAt(text.length() - 1) != '\n' && text.charAt(text.length() - 1) != '\r') {
        text.append(ending);
      }
      text.append(written(new Record(List.of(), ending), cells, added));
    }
    return text.toString();
  }

  private int rowOf(String siteId) {
    int column = header.indexOf(ID);
    for (int row = 1; row < records.size(); row++) {
      if (!siteId.isEmpty() && column >= 0 && records.get(row).value(column).equals(siteId)) {
        return row;
      }
    }
    return -1;
  }

  private String heading(List<String> added) {
    if (records.isEmpty()) {
      return String.join(",", added) + ending;
    }
    Record first = records.get(0);
    return new Record(together(first.raw(), added), first.ending()).text();
  }

  private static Record widened(Record record, List<String> added) {
    List<String> empty = added.stream().map(name -> "").toList();
    return new Record(together(record.raw(), empty), record.ending());
  }

  private static String wider(Record record, List<String> added) {
    return (record.isBlank() ? record : widened(record, added)).text();
  }

  /** The row; a cell that says the same as before stays as it is written. */
  private String written(Record before, Map<String, String> cells, List<String> added) {
    List<String> names = together(header, added);
    List<String> raw = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      String now = cells.getOrDefault(names.get(i), "");
      boolean same = i < before.raw().size() && before.value(i).equals(now);
      raw.add(same ? before.raw().get(i) : CsvCell.raw(now));
    }
    return new Record(raw, before.ending()).text();
  }

  private static List<String> together(List<String> some, List<String> more) {
    List<String> all = new ArrayList<>(some);
    all.addAll(more);
    return all;
  }
}
