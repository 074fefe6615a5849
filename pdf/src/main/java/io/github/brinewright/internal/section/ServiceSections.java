package io.github.brinewright.internal.section;

import io.github.brinewright.model.Element;
import io.github.brinewright.model.Items;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.service.ServiceStudy;
import java.util.List;

/** The sections of a report on a present softener. */
public final class ServiceSections {
  private final ServiceStudy study;

  /** The report of a study. */
  public ServiceSections(ServiceStudy study) {
    this.study = study;
  }

  /** The sections, in the order in which they are read. */
  public List<Section> sections() {
    return List.of(wrong(), advice());
  }

  private Section wrong() {
    List<Phrase> faults = study.faults().stream().<Phrase>map(Phrase.Wrong::new).toList();
    Element matter =
        faults.isEmpty()
            ? Paragraph.of(Phrase.text("service.nothingWrong"))
            : new Items(faults, false);
    return Section.of("service.wrong", Phrase.text("service.wrong"), matter);
  }

  private Section advice() {
    return Section.of(
        "service.advice",
        Phrase.text("service.advice"),
        Paragraph.strong(new Phrase.Advised(study.advice())));
  }
}
