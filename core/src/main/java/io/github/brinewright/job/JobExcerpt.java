package io.github.brinewright.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The files of a job with one home alone: nothing of the other customers is passed on. */
public final class JobExcerpt {
  private JobExcerpt() {}

  /**
   * The files of a job by name, sites.csv with the filled cells of one home.
   *
   * @param files of the job, free of errors in that row
   * @param logo of the dealer
   * @param siteId id of the home
   * @throws IOException when a file cannot be read, or has no such home
   */
  public static Map<String, String> of(JobFiles files, Optional<Logo> logo, String siteId)
      throws IOException {
    Map<String, String> cells =
        SiteCells.of(files, siteId)
            .orElseThrow(() -> new IOException("there is no home \"" + siteId + "\""));
    Map<String, String> texts = withoutHomes(files, logo);
    texts.put(SiteCells.FILE, SiteCells.csv(cells));
    return texts;
  }

  /**
   * The files that the homes of a job share: the dealer, the price list, the tariffs.
   *
   * @param files of the job
   * @param logo of the dealer
   * @throws IOException when a file cannot be read
   */
  public static Map<String, String> withoutHomes(JobFiles files, Optional<Logo> logo)
      throws IOException {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String name : JobFiles.NAMES) {
      if (files.has(name) && !name.equals(SiteCells.FILE)) {
        TextFile.read(files, name, new ArrayList<>()).ifPresent(text -> texts.put(name, text));
      }
    }
    logo.ifPresent(
        picture ->
            texts.put(picture.file(), Base64.getEncoder().encodeToString(picture.content())));
    return texts;
  }
}
