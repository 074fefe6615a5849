package io.github.brinewright.internal.visit;

import io.github.brinewright.job.Column;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.SafeFile;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.job.SiteColumns;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Writes the row that stands on a page into sites.csv: whole or not at all, all other rows byte for
 * byte, and only where the file is as it was when the page read it.
 */
public final class Saving {
  private static final Object ONE_AT_A_TIME = new Object();

  private Saving() {}

  /** What came of it. */
  public enum Outcome {
    /** The row stands in the file. */
    SAVED,
    /** The file has changed since the page read it; nothing was written. */
    CHANGED,
    /** The row has errors; nothing was written. */
    WRONG,
    /** The homes stand in a spreadsheet; nothing was written. */
    SPREADSHEET
  }

  /**
   * What came of it, with what is wrong.
   *
   * @param outcome in a word
   * @param problems of the row
   */
  public record Saved(Outcome outcome, List<Problem> problems) {
    static Saved of(Outcome outcome) {
      return new Saved(outcome, List.of());
    }
  }

  /**
   * Writes a row.
   *
   * @param visit the row, of a folder just read
   * @param version of sites.csv that the page read
   * @throws IOException when the file cannot be read or written; it is as it was
   */
  public static Saved save(Visit visit, String version) throws IOException {
    synchronized (ONE_AT_A_TIME) {
      if (visit.folder().files().has(OneHome.SPREADSHEET)) {
        return Saved.of(Outcome.SPREADSHEET);
      }
      if (!visit.folder().version().equals(version)) {
        return Saved.of(Outcome.CHANGED);
      }
      return write(visit);
    }
  }

  private static Saved write(Visit visit) throws IOException {
    byte[] before = visit.folder().sites();
    byte[] after = text(visit, decoded(before)).getBytes(StandardCharsets.UTF_8);
    List<Problem> wrong = problems(visit, after);
    if (!wrong.isEmpty()) {
      return new Saved(Outcome.WRONG, wrong);
    }
    byte[] now = Folder.read(visit.folder().path()).sites();
    if (!Digest.of(now).equals(Digest.of(before))) {
      return Saved.of(Outcome.CHANGED);
    }
    SafeFile.write(visit.folder().path().resolve(SiteCells.FILE), after);
    return Saved.of(Outcome.SAVED);
  }

  private static String decoded(byte[] bytes) throws CharacterCodingException {
    return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
  }

  private static String text(Visit visit, String before) {
    List<String> order = SiteColumns.all().stream().map(Column::name).toList();
    return new SitesText(before).with(visit.siteId().orElse(""), visit.cells(), order);
  }

  /** What is wrong with the row itself, and whatever the file has not had before. */
  private static List<Problem> problems(Visit visit, byte[] after) {
    if (!visit.problems().isEmpty()) {
      return visit.problems();
    }
    JobFiles files = visit.folder().files();
    List<Problem> before = files.has(SiteCells.FILE) ? JobFolder.read(files).problems() : List.of();
    return JobFolder.read(new OneHome(files, after)).problems().stream()
        .filter(problem -> before.stream().noneMatch(each -> sameFault(each, problem)))
        .toList();
  }

  /** A row may have moved by added lines; its fault is the same. */
  private static boolean sameFault(Problem one, Problem other) {
    return one.code() == other.code()
        && one.column().equals(other.column())
        && one.value().equals(other.value());
  }
}
