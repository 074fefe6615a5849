package io.github.brinewright.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;

/** The files of a job with one home alone: nothing of the other customers is passed on. */
public final class JobExcerpt {
  private JobExcerpt() {}

  /**
   * {@return the files of a job by name, sites.csv with the filled cells of one home and the
   * revision of its quote}
   *
   * @param files of the job, free of errors in that row
   * @param dealer of the job, whose pictures come along
   * @param home of the job, of whose quote there may be a later revision than the files say
   * @throws IOException when a file cannot be read, or has no such home
   */
  public static Map<String, String> of(JobFiles files, Dealer dealer, QuotedHome home)
      throws IOException {
    String siteId = home.site().id();
    Map<String, String> cells =
        new LinkedHashMap<>(
            SiteCells.of(files, siteId)
                .orElseThrow(() -> new IOException("there is no home \"" + siteId + "\"")));
    Map<String, String> texts = withoutHomes(files, dealer);
    if (home.record().isRevised()) {
      cells.put(SiteColumns.REVISION, String.valueOf(home.record().revision()));
    }
    texts.put(SiteCells.FILE, SiteCells.csv(cells));
    return texts;
  }

  /**
   * {@return the files that the homes of a job share: the dealer, the price list, the tariffs}
   *
   * @param files of the job
   * @param dealer of the job, whose pictures come along
   * @throws IOException when a file cannot be read
   */
  public static Map<String, String> withoutHomes(JobFiles files, Dealer dealer) throws IOException {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String name : JobFiles.NAMES) {
      if (files.has(name) && !name.equals(SiteCells.FILE)) {
        TextFile.read(files, name, new ArrayList<>()).ifPresent(text -> texts.put(name, text));
      }
    }
    dealer
        .pictures()
        .forEach(
            picture ->
                texts.put(picture.file(), Base64.getEncoder().encodeToString(picture.content())));
    return texts;
  }
}
