package io.github.brinewright.internal.section;

import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Together;
import io.github.brinewright.service.ServiceStudy;
import java.util.ArrayList;
import java.util.List;

/** The two pages of a report on a present softener. */
public final class ServiceSections {
  /** How what the report rests on is set. */
  public enum Print {
    /** As lists. */
    USUAL,
    /** As small print, where there is much of it. */
    SMALL
  }

  private final ServiceStudy study;
  private final Print print;

  /**
   * The report of a study.
   *
   * @param print of what it rests on
   */
  public ServiceSections(ServiceStudy study, Print print) {
    this.study = study;
    this.print = print;
  }

  /** The sections, in the order in which they are read. */
  public List<Section> sections() {
    ServiceNow now = new ServiceNow(study);
    ServiceNotes notes = new ServiceNotes(study, print);
    List<Section> sections = new ArrayList<>();
    sections.add(now.section());
    sections.add(now.wrong());
    sections.add(new ServiceAdvice(study).section());
    sections.add(notes.mends());
    sections.add(compared());
    sections.add(notes.assumed());
    sections.add(notes.cautions());
    return sections;
  }

  private Section compared() {
    return Section.of(
        "service.compared",
        Phrase.text("service.compared"),
        Together.of(
            Paragraph.quiet(Phrase.text("service.compared.lead")),
            new ServiceColumns(study).table()),
        Paragraph.strong(Phrase.text("service.promise")));
  }
}
