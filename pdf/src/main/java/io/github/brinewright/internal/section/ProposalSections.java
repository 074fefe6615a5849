package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Revision;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.study.HomeStudy;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The sections of a proposal in their order. */
public final class ProposalSections {
  private ProposalSections() {}

  /**
   * All sections that apply.
   *
   * @param study of a year in the home; without one its section is left out
   * @param revision what the proposal changes; without one its section is left out
   */
  public static List<Section> of(
      Subject subject, @Nullable HomeStudy study, @Nullable Revision revision) {
    subject.requireDeposits();
    List<Section> sections = new ArrayList<>(toTheSignature(subject, study, revision));
    sections.addAll(OwnPages.of(subject.dealer()));
    if (subject.dealer().appendix() || !subject.recommends()) {
      sections.addAll(appendix(subject, study));
    }
    return sections;
  }

  /** What is read before anything is signed. */
  private static List<Section> toTheSignature(
      Subject subject, @Nullable HomeStudy study, @Nullable Revision revision) {
    List<Section> sections = new ArrayList<>();
    sections.add(new HomeVerdict(subject.comparison()).section());
    sections.add(new Opening(subject).section());
    if (revision != null) {
      sections.add(new RevisedItems(revision).section());
    }
    new Choices(subject).section().ifPresent(sections::add);
    if (subject.recommends()) {
      if (study != null) {
        sections.add(new YearInHome(study, subject).section());
      }
      new Price(subject).section().ifPresent(sections::add);
    }
    sections.add(new Signing(subject).section());
    return sections;
  }

  /** The figures behind it, on pages of their own. */
  private static List<Section> appendix(Subject subject, @Nullable HomeStudy study) {
    List<Section> sections = new ArrayList<>();
    sections.add(new WaterAndHome(subject).section());
    if (subject.showsOptions()) {
      sections.add(new SideBySide(subject).section());
    }
    if (subject.recommends()) {
      if (study != null) {
        sections.add(new YearInHome(study, subject).changes());
      }
      sections.add(SizesAndDosages.of(subject).section());
      sections.add(new Costs(subject).section());
    }
    if (subject.showsOptions()) {
      sections.add(new WorkedOut(subject).section());
    }
    if (subject.recommends()) {
      sections.add(new EverySetting(subject.comparison()).section());
      sections.set(0, begins(sections.get(0)));
    }
    return sections;
  }

  private static Section begins(Section first) {
    return new Section(
        first.key(), Phrase.text("appendix.heading", first.title()), first.elements(), true);
  }
}
