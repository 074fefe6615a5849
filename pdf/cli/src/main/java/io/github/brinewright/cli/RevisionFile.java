package io.github.brinewright.cli;

import io.github.brinewright.job.QuoteRecord;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SafeFile;
import io.github.brinewright.proposal.HomeDocument;
import io.github.brinewright.proposal.Proposals;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;

/**
 * The document of a home in a folder where earlier ones stand. An earlier file is never
 * overwritten: where the last revision says something else, or another day, the next one is written
 * beside it.
 *
 * @param document as it stands there now
 * @param state what became of it
 * @param earlier file that it revises; its own where it stands already, empty for a first one
 */
record RevisionFile(HomeDocument document, State state, String earlier) {
  /** What became of a document. */
  enum State {
    /** It is the first of its home here. */
    FIRST,
    /** It stands beside an earlier one. */
    REVISED,
    /** It stood there already, byte for byte. */
    UNCHANGED
  }

  /** Writes the document of a home, unless it stands there already. */
  static RevisionFile write(Proposals proposals, QuotedHome home, EarlierFiles files, LocalDate day)
      throws IOException {
    Path folder = files.folder();
    int highest = files.highest(proposals.fileName(as(1, home)));
    int last = Math.max(highest, home.record().revision());
    HomeDocument document = proposals.document(as(last, home), day);
    String earlier = highest == 0 ? "" : proposals.fileName(as(highest, home));
    if (last == highest) {
      if (Arrays.equals(document.pdf(), Files.readAllBytes(folder.resolve(earlier)))) {
        return new RevisionFile(document, State.UNCHANGED, earlier);
      }
      document = proposals.document(as(last + 1, home), day);
    }
    SafeFile.writeNew(folder.resolve(document.fileName()), document.pdf());
    return new RevisionFile(document, earlier.isEmpty() ? State.FIRST : State.REVISED, earlier);
  }

  private static QuotedHome as(int revision, QuotedHome home) {
    QuoteRecord record = home.record();
    return home.recorded(record.withRevision(revision));
  }

  boolean isUnchanged() {
    return state == State.UNCHANGED;
  }

  /** What to say of it beside the verdict; nothing of a first one. */
  String said() {
    return switch (state) {
      case FIRST -> "";
      case REVISED ->
          "; " + document.fileName() + " is a new revision of " + earlier + ", which stays";
      case UNCHANGED -> "; " + earlier + " stands already and says the same";
    };
  }
}
