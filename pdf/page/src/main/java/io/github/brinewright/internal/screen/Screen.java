package io.github.brinewright.internal.screen;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.internal.visit.Asked;
import io.github.brinewright.internal.visit.Trial;
import io.github.brinewright.internal.visit.Visit;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.ProblemWords;
import io.github.brinewright.service.ServiceStudy;
import java.io.IOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a page shows of a visit, whole or the parts that change with an answer. What they have in
 * common is worked out once; for use by one thread.
 */
public final class Screen {
  private final Look look;
  private final Job job;
  private final Visit visit;
  private final Asked asked;
  private final LocalDate date;
  private @Nullable AnswerView answered;
  private @Nullable CompareView compared;

  /**
   * A screen.
   *
   * @param look how it is read
   * @param job what all homes share
   * @param visit what stands on the page
   * @param asked what the page asks with
   * @param date of today
   */
  public Screen(Look look, Job job, Visit visit, Asked asked, LocalDate date) {
    this.look = look;
    this.job = job;
    this.visit = visit;
    this.asked = asked;
    this.date = date;
  }

  /** How it is read. */
  public Look look() {
    return look;
  }

  /** What all homes share. */
  Job job() {
    return job;
  }

  /** What stands on the page. */
  public Visit visit() {
    return visit;
  }

  /** Which view is open. */
  public View view() {
    return View.of(asked);
  }

  /**
   * The open view.
   *
   * @throws IOException when the folder cannot be read
   */
  public String html() throws IOException {
    return switch (view()) {
      case VISIT -> visitView().toString();
      case COMPARE -> visit.home().isPresent() ? compare().html().toString() : missing();
      case TAKE ->
          visit.home().isPresent() ? new TakeView(look, comparison()).html().toString() : missing();
    };
  }

  /**
   * The parts that follow from the answers, by the name of their places.
   *
   * @throws IOException when the folder cannot be read
   */
  public Map<String, String> parts() throws IOException {
    if (view() == View.VISIT) {
      return Map.of("answer", answer().toString());
    }
    return view() == View.COMPARE && visit.home().isPresent() ? compare().parts() : Map.of();
  }

  /** What sliders stand at; none where there are none. */
  public Map<String, String> shown() {
    if (view() != View.COMPARE || visit.home().isEmpty()) {
      return Map.of();
    }
    KnobsView knobs = new KnobsView(look, trial());
    Map<String, String> shown = new LinkedHashMap<>(knobs.shown());
    shown.put("trial", knobs.said());
    return shown;
  }

  /** In one sentence, for those who listen. */
  public String said() {
    if (visit.home().isEmpty()) {
      return look.text("page.wrong");
    }
    return view() == View.COMPARE ? compare().said() : answered().said();
  }

  /**
   * What is wrong by the name of the field.
   *
   * @throws IOException when the folder cannot be read
   */
  public Map<String, String> wrong(List<Problem> problems) throws IOException {
    return problems.isEmpty()
        ? Map.of()
        : Beside.of(problems, form().labels(), look.words().locale());
  }

  private FormView form() throws IOException {
    return FormView.of(look, job, visit.cells(), visit.folder().stored(visit.siteId()));
  }

  private Trial trial() {
    return new Trial(visit.job().orElse(job), visit.home().orElseThrow(), asked);
  }

  private CompareView compare() {
    if (compared == null) {
      compared = CompareView.of(look, trial(), asked, date);
    }
    return compared;
  }

  private Comparison comparison() {
    return visit.job().orElse(job).compare(visit.home().orElseThrow());
  }

  private Html visitView() throws IOException {
    return new Html()
        .open("div", "class", "visit")
        .open("form", "id", "form", "autocomplete", "off", "aria-label", look.text("page.visit"))
        .add(form().html())
        .open("div", "class", "save")
        .element("button", look.text("page.save"), "type", "submit", "id", "save")
        .element("p", "", "id", "saved", "role", "status")
        .close("div")
        .close("form")
        .open("section", "class", "card answer", "aria-labelledby", "answer-heading")
        .element("h2", look.text("page.answer"), "id", "answer-heading")
        .open("div", "id", "part-answer")
        .add(answer())
        .close("div")
        .close("section")
        .close("div");
  }

  private Html answer() throws IOException {
    return visit.home().isEmpty() ? wrongList() : answered().brief();
  }

  private AnswerView answered() {
    if (answered == null) {
      Comparison comparison = comparison();
      ServiceStudy service = visit.job().orElse(job).service(comparison).orElse(null);
      answered = new AnswerView(look, comparison, service, job.dealer(), date);
    }
    return answered;
  }

  /** Each answer that is wrong, with the way to its field. */
  private Html wrongList() throws IOException {
    Html html = new Html().element("p", look.text("page.wrong"), "class", "voice-strong");
    ProblemWords words = new ProblemWords(look.words().locale());
    Map<String, String> labels = form().labels();
    html.open("ul");
    Beside.of(visit.problems(), labels, look.words().locale())
        .forEach((field, said) -> html.add(item(field, labels.getOrDefault(field, ""), said)));
    html.close("ul");
    List<Problem> others =
        visit.reading().problems().stream()
            .filter(each -> !visit.problems().contains(each))
            .toList();
    others.forEach(each -> html.element("p", words.say(each), "class", "wrong"));
    return html;
  }

  private static Html item(String field, String label, String said) {
    Html html = new Html().open("li");
    if (!field.isEmpty()) {
      String id = "field-" + field;
      html.element("button", label, "type", "button", "class", "goto", "data-goto", id).text(" ");
    }
    return html.element("span", said, "class", "wrong").close("li");
  }

  private String missing() {
    return new Html()
        .open("section", "class", "card")
        .element("h2", look.text("page.fillFirst"))
        .element("p", look.text("page.wrong"))
        .close("section")
        .toString();
  }
}
