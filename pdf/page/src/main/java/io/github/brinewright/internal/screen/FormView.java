package io.github.brinewright.internal.screen;

import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobExcerpt;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Field;
import io.github.brinewright.model.Fields;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Together;
import io.github.brinewright.proposal.VisitSheet;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * The entries of a visit: the fields of the form of a site visit, on screen.
 *
 * @param look how it is read
 * @param sections of the form with what stands on the page
 * @param stored values of its fields in the folder, by name
 */
public record FormView(Look look, List<Section> sections, Map<String, String> stored) {
  /**
   * The form of a home.
   *
   * @param cells of its row as it stands on the page
   * @param stored cells of its row in the folder
   * @throws IOException when the folder cannot be read
   */
  public static FormView of(
      Look look, Job job, Map<String, String> cells, Map<String, String> stored)
      throws IOException {
    CarriedJob carried =
        new CarriedJob("", LocalDate.EPOCH, JobExcerpt.withoutHomes(job.files(), job.dealer()));
    return new FormView(
        look, sections(job, cells, carried), FormFields.values(sections(job, stored, carried)));
  }

  private static List<Section> sections(Job job, Map<String, String> cells, CarriedJob carried) {
    return new VisitSheet(job.dealer(), job.tariffs(), cells, carried).model().sections();
  }

  /** The labels of its fields by name. */
  public Map<String, String> labels() {
    return FormFields.labels(sections, look.words());
  }

  Html html() {
    Html html = new Html().element("p", look.text("page.lead"), "class", "voice-quiet");
    sections.forEach(section -> html.add(section(section)));
    return html;
  }

  /** Those that are seldom filled are folded away until something stands in them. */
  private Html section(Section section) {
    Html html = new Html();
    boolean folded = isFolded(section);
    String title = section.title().in(look.words());
    if (folded) {
      html.open("details", "class", "part").element("summary", title);
    } else {
      html.open("fieldset", "class", "part").element("legend", title);
    }
    section.elements().forEach(element -> html.add(element(element)));
    return html.close(folded ? "details" : "fieldset");
  }

  private static boolean isFolded(Section section) {
    boolean seldom =
        List.of("form.treated", "form.fixtures", "form.present").contains(section.key());
    return seldom
        && FormFields.values(List.of(section)).values().stream().allMatch(String::isEmpty);
  }

  private Html element(Element element) {
    Html html = new Html();
    if (element instanceof Together together) {
      together.elements().forEach(each -> html.add(element(each)));
    } else if (element instanceof Paragraph paragraph) {
      html.element("p", paragraph.text().in(look.words()), "class", "voice-quiet");
    } else if (element instanceof Fields fields) {
      html.open("div", "class", "fields");
      fields.entries().forEach(entry -> html.add(field(entry)));
      html.close("div");
    }
    return html;
  }

  private Html field(Fields.Entry entry) {
    Field field = entry.field();
    String before = stored.getOrDefault(field.name(), "");
    return new FieldView(look, field, before, entry.span() > 1).html();
  }
}
