package io.github.brinewright.job;

import io.github.brinewright.job.Problem.Argument;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads dealer.properties: name, look, terms, tax and credit. */
final class DealerReader {
  private static final Columns<DealerDraft, DealerColumns.Source> COLUMNS = DealerColumns.COLUMNS;
  private static final Pattern FILE_NAME = Pattern.compile("[\\p{L}\\p{N}._-]{1,80}");
  private static final String LOGO = "logo";

  private final Row row;
  private final JobFiles files;

  private DealerReader(Row row, JobFiles files) {
    this.row = row;
    this.files = files;
  }

  /** What the file says, with the usual values for what it leaves out. */
  static DealerDraft read(JobFiles files, List<Problem> problems) {
    Row row = new Row(COLUMNS.file(), 0, problems::add);
    if (files.has(COLUMNS.file())) {
      TextFile.read(files, COLUMNS.file(), problems).ifPresent(text -> load(text, row));
    }
    DealerDraft draft = new DealerDraft();
    COLUMNS.read(row, draft);
    checkMoney(row, DealerColumns.METER, draft.meterRetrofit, draft);
    checkMoney(row, DealerColumns.VISIT, draft.serviceVisit, draft);
    DealerReader reader = new DealerReader(row, files);
    reader.picture(LOGO, draft.logo).ifPresent(draft.dealer::logo);
    for (int page = 0; page < OwnPage.MOST; page++) {
      reader.readPage(page, draft.pages.get(page));
    }
    return draft;
  }

  private static void checkMoney(
      Row row, String key, @Nullable BigDecimal amount, DealerDraft draft) {
    if (amount != null) {
      row.checkMoney(key, amount, draft.currency());
    }
  }

  private static void load(String text, Row row) {
    Properties properties = new Properties();
    try {
      properties.load(new StringReader(text));
    } catch (IOException | IllegalArgumentException malformed) {
      row.note("", "", ProblemCode.NOT_PROPERTIES, new Argument.Text(TextFile.said(malformed)));
    }
    Map<String, String> values = new LinkedHashMap<>();
    List<String> known = COLUMNS.names();
    for (String key : new TreeSet<>(properties.stringPropertyNames())) {
      if (known.contains(key)) {
        values.put(key, properties.getProperty(key).strip());
      } else {
        row.note(key, "", ProblemCode.KEY_UNKNOWN, new Argument.Meant(key, known));
      }
    }
    row.with(values);
  }

  /** A page needs a title, and a picture needs words for those who cannot see it. */
  private void readPage(int page, PageDraft draft) {
    if (!draft.isStated()) {
      return;
    }
    if (draft.text(PageColumns.TITLE).isEmpty()) {
      row.needed(COLUMNS.column(PageColumns.key(page, PageColumns.TITLE)));
    }
    if (!draft.picture.isEmpty() && draft.text(PageColumns.ALTERNATIVE).isEmpty()) {
      row.needed(COLUMNS.column(PageColumns.key(page, PageColumns.ALTERNATIVE)));
    }
    draft.drawn = picture(PageColumns.key(page, PageColumns.PICTURE), draft.picture).orElse(null);
  }

  /** The picture under a key; empty where none is named, or after noting what is wrong. */
  private Optional<Logo> picture(String key, String name) {
    if (name.isEmpty()) {
      return Optional.empty();
    }
    if (!FILE_NAME.matcher(name).matches() || JobFiles.NAMES.contains(name) || !files.has(name)) {
      row.note(key, name, ProblemCode.PICTURE_MISSING);
      return Optional.empty();
    }
    try {
      if (files.size(name) > Logo.MOST_BYTES) {
        row.note(key, name, ProblemCode.PICTURE_TOO_LARGE);
      } else {
        return Optional.of(Logo.of(name, files.read(name)));
      }
    } catch (Logo.RefusedException refused) {
      note(key, name, refused.reason());
    } catch (IOException | IllegalArgumentException unreadable) {
      row.note(
          key, name, ProblemCode.FILE_UNREADABLE, new Argument.Text(TextFile.said(unreadable)));
    }
    return Optional.empty();
  }

  private void note(String key, String name, Logo.Reason reason) {
    switch (reason) {
      case TOO_LARGE -> row.note(key, name, ProblemCode.PICTURE_TOO_LARGE);
      case NOT_A_PICTURE -> row.note(key, name, ProblemCode.NOT_A_PICTURE);
      case TOO_MANY_PIXELS ->
          row.note(
              key, name, ProblemCode.PICTURE_TOO_MANY_PIXELS, Argument.Number.of(Logo.MOST_PIXELS));
      case DAMAGED -> row.note(key, name, ProblemCode.PICTURE_DAMAGED);
    }
  }
}
