package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Together;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.sizing.AssumptionKind;
import io.github.brinewright.sizing.ControlOptions;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is set at the softener that is already in a house, beside what it is set to now. */
public final class PresentSections {
  private static final Set<AssumptionKind> OF_THE_BED =
      EnumSet.of(
          AssumptionKind.BED_FROM_RATING,
          AssumptionKind.BED_FROM_VESSEL,
          AssumptionKind.RESIN_STANDARD,
          AssumptionKind.AGE_NOT_KNOWN,
          AssumptionKind.AGE_LOSS,
          AssumptionKind.REFILL_FLOW_USUAL);

  private final ServiceStudy study;
  private final ServiceOption option;
  private final ControlOptions options;
  private final FoundValues found;
  private final ControlValues values;

  /**
   * The sheet of a present softener.
   *
   * @param study of it
   * @param option set right, or with a meter
   * @param options hour, day and form of the reserve
   */
  public PresentSections(ServiceStudy study, ServiceOption option, ControlOptions options) {
    this.study = study;
    this.option = option;
    this.options = options;
    found = new FoundValues(study.found(), options.start());
    values =
        option
            .candidate()
            .<ControlValues>map(candidate -> new ComputedValues(candidate, options))
            .orElse(found);
  }

  /** The sections of the sheet. */
  public List<Section> sections() {
    Comparison comparison = study.comparison();
    List<Section> sections = new ArrayList<>();
    sections.add(new HomeVerdict(comparison).compact());
    SettingsSections.cautions(comparison, option.candidate()).ifPresent(sections::add);
    sections.add(control());
    sections.add(SettingsSections.cycle(values));
    sections.add(restsOn(comparison));
    sections.add(StartUp.present(found.control(), values.control()));
    sections.add(new HandNotes(comparison, values).section());
    sections.add(SettingsSections.finePrint());
    return sections;
  }

  private Section control() {
    Optional<FoundValues> now = option.candidate().map(candidate -> found);
    ControlTable table = new ControlTable(values, now, options.start());
    List<Element> elements = new ArrayList<>();
    if (now.isEmpty()) {
      elements.add(Paragraph.strong(Phrase.text("settings.right")));
    }
    elements.add(table.table());
    elements.addAll(table.more());
    return SettingsSections.section("settings.controlNow", elements.toArray(Element[]::new));
  }

  private Section restsOn(Comparison comparison) {
    List<Element> elements = new ArrayList<>(List.of(FitRows.found(values)));
    FitRows.ofHome(comparison).ifPresent(elements::add);
    Phrase assumed = Phrase.sentences(assumed());
    if (!assumed.isEmpty()) {
      elements.add(Paragraph.quiet(assumed));
    }
    return SettingsSections.section("settings.restsOn", new Together(elements));
  }

  /** What the settings of this sheet rest on; what was set before is no matter to new ones. */
  private List<Phrase> assumed() {
    return study.assumptions().stream()
        .filter(one -> option.candidate().isEmpty() || OF_THE_BED.contains(one.kind()))
        .<Phrase>map(Phrase.Assumed::new)
        .toList();
  }
}
