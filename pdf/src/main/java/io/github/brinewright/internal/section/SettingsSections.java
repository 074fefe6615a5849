package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.model.Columns;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.sizing.ControlOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the installer of a softener sets, fits and checks, and what is done by hand later. */
public final class SettingsSections {
  private final Comparison comparison;
  private final Candidate candidate;
  private final ControlOptions options;
  private final ControlValues values;

  /**
   * The sheet of a candidate.
   *
   * @param comparison that it belongs to
   * @param candidate to set up
   * @param options hour, day and form of the reserve
   */
  public SettingsSections(Comparison comparison, Candidate candidate, ControlOptions options) {
    this.comparison = comparison;
    this.candidate = candidate;
    this.options = options;
    values = new ComputedValues(candidate, options);
  }

  /** The sections of the sheet. */
  public List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    sections.add(new HomeVerdict(comparison).compact());
    cautions(comparison, Optional.of(candidate)).ifPresent(sections::add);
    if (!candidate.feasible()) {
      sections.add(warnings());
    }
    sections.add(control());
    sections.add(cycle(values));
    sections.add(StartUp.fitted(values.control()));
    sections.add(new HandNotes(comparison, values).section());
    sections.add(finePrint());
    return sections;
  }

  static Section section(String key, Element... elements) {
    return Section.of(key, Phrase.text(key), elements);
  }

  /** What to be careful about, where there is something. */
  static Optional<Section> cautions(Comparison comparison, Optional<Candidate> candidate) {
    List<Finding> cautions = candidate.map(comparison::cautions).orElseGet(comparison::cautions);
    return Optional.of(cautions)
        .filter(found -> !found.isEmpty())
        .map(
            found ->
                Section.of(
                    "cautions", Phrase.text("opening.check"), BeforeYouDecide.compact(found)));
  }

  /** Limits that the candidate breaks: an installer must not set it up unasked. */
  private Section warnings() {
    List<Element> broken = new ArrayList<>();
    candidate
        .broken()
        .forEach(
            finding ->
                broken.add(
                    Paragraph.strong(
                        Phrase.text(
                            "settings.warning",
                            Phrase.of(Severity.STOP),
                            new Phrase.Found(finding)))));
    return new Section("settings.warnings", Phrase.NONE, broken, false);
  }

  private Section control() {
    ControlTable table = new ControlTable(values, Optional.empty(), options.start());
    List<Element> elements = new ArrayList<>();
    elements.add(
        new Columns(List.of(List.of(table.table()), List.of(FitRows.of(comparison, candidate)))));
    elements.addAll(table.more());
    return section("settings.control", elements.toArray(Element[]::new));
  }

  static Section cycle(ControlValues values) {
    CycleSteps steps =
        new CycleSteps(values.cycle(), Optional.of(values.begins()).filter(time -> values.waits()));
    return section("settings.cycle", steps.table());
  }

  static Section finePrint() {
    return Section.of(
        "settings.fine",
        Phrase.NONE,
        Paragraph.fine(
            Phrase.sentences(
                Stream.of(
                        Caution.LOCAL_RULES,
                        Caution.NOT_A_PURIFIER,
                        Caution.DISCHARGE,
                        Caution.OUTLET)
                    .map(Phrase.Warned::new)
                    .toList())));
  }
}
