package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.model.Columns;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Field;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Items;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Ticks;
import io.github.brinewright.model.Together;
import io.github.brinewright.model.WritingLines;
import io.github.brinewright.sale.PackageKind;
import io.github.brinewright.sale.Packages;
import io.github.brinewright.sale.PlaceRule;
import io.github.brinewright.sale.SigningTerms;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The cautions, and the place to sign when there is something to accept. */
public final class Signing {
  private final Subject subject;

  /** The section of a proposal. */
  public Signing(Subject subject) {
    this.subject = subject;
  }

  /** The section, with a place to sign where there is something to sign. */
  public Section section() {
    boolean any = subject.signs();
    List<Element> elements = new ArrayList<>();
    if (!subject.recommends()) {
      QuoteNotes.withoutPrice(subject).ifPresent(elements::add);
    }
    elements.add(cautions());
    if (any) {
      if (subject.keeps() && subject.packages().of(PackageKind.KEEP).isEmpty()) {
        elements.add(Paragraph.strong(Phrase.text("now.sign")));
      }
      subject.comparison().recommended().map(this::acceptance).ifPresent(elements::add);
    } else if (subject.recommends()) {
      elements.add(Paragraph.strong(whyNot()));
    }
    subject.signing().outdated().forEach(rule -> elements.add(Paragraph.quiet(outdated(rule))));
    return new Section(
        "signing", Phrase.text(any ? "cautions.heading" : "cautions.alone"), elements, false);
  }

  /** Why there is no place to sign: tests, or the rules of the place. */
  private Phrase whyNot() {
    if (!subject.comparison().verdict().permitsSignature()) {
      return Phrase.text("accept.notYet");
    }
    SigningTerms terms = subject.signing();
    return Phrase.text(
        "accept." + terms.obstacle().orElseThrow().name(),
        Phrase.plain(terms.cancellationRule().orElseThrow()));
  }

  private static Phrase outdated(PlaceRule rule) {
    return Phrase.text(
        "accept.outdated", Phrase.plain(rule.citation()), new Phrase.Day(rule.checked()));
  }

  /** The statement that a law asks for beside the signature, with its citation. */
  private List<Element> statement() {
    return subject.signing().statement().stream()
        .<Element>map(
            each ->
                Paragraph.strong(
                    Phrase.text(
                        "accept.statement",
                        Phrase.plain(each.text()),
                        Phrase.plain(each.citation()))))
        .toList();
  }

  /** What the acceptance rests on; nothing where no treatment is stated. */
  private Phrase condition() {
    Comparison comparison = subject.comparison();
    if (!comparison.verdict().isConditional()) {
      return Phrase.NONE;
    }
    boolean planned = comparison.treatment().isPresent();
    return Phrase.text(
        planned ? "accept.planned" : "accept.condition",
        TreatedAs.stated(comparison.home().site()));
  }

  private Items cautions() {
    List<Caution> cautions =
        Caution.applying(
            subject.comparison().home(),
            subject.comparison().verdict(),
            subject.columns().stream()
                .map(candidate -> candidate.softener().regenerant())
                .collect(Collectors.toSet()));
    return new Items(cautions.stream().<Phrase>map(Phrase.Warned::new).toList(), true);
  }

  private Together acceptance(Candidate candidate) {
    Phrase dealer = Phrase.plain(subject.dealer().name());
    Phrase text =
        subject.offersChoices()
            ? Phrase.text("accept.choice", dealer)
            : Phrase.text(
                "accept.text",
                dealer,
                Phrase.plain(candidate.softener().name()),
                Phrase.of(Figure.of(candidate.quote().total())));
    List<Element> elements = new ArrayList<>();
    elements.add(Heading.of(Phrase.text("accept.heading")));
    elements.add(Paragraph.of(Phrase.sentences(List.of(text, condition()))));
    if (subject.offersChoices()) {
      elements.add(chosen());
    }
    elements.addAll(statement());
    elements.add(party("customer", "accept.customer", Phrase.text("accept.name")));
    elements.add(party("dealer", "accept.forDealer", Phrase.text("accept.dealer", dealer)));
    return new Together(elements);
  }

  /** The same marks and ticks as where the choice is made; a single package needs no mark. */
  private Element chosen() {
    PackageNames names = new PackageNames(subject);
    Packages packages = subject.packages();
    List<List<Element>> columns = new ArrayList<>();
    if (packages.all().size() > 1) {
      columns.add(List.of(new Ticks(packages.all().stream().map(names::mark).toList())));
    }
    if (!packages.extras().isEmpty()) {
      columns.add(List.of(new Ticks(packages.extras().stream().map(names::tick).toList())));
    }
    WaysToPay.of(subject)
        .map(ways -> new Ticks(ways.ways().stream().map(ways::mark).toList()))
        .ifPresent(ticks -> columns.add(List.of(ticks)));
    return new Columns(columns);
  }

  /** A row of fields for one who signs; read aloud, each field says whose it is. */
  private static WritingLines party(String id, String who, Phrase nameCaption) {
    return new WritingLines(
        List.of(
            line(Field.Kind.TEXT, id + "_name", who, Phrase.text("accept.name"), nameCaption),
            line(Field.Kind.SIGNATURE, id + "_signature", who, Phrase.text("accept.signature")),
            line(Field.Kind.TEXT, id + "_date", who, Phrase.text("accept.date"))));
  }

  private static WritingLines.Line line(Field.Kind kind, String name, String who, Phrase what) {
    return line(kind, name, who, what, what);
  }

  private static WritingLines.Line line(
      Field.Kind kind, String name, String who, Phrase what, Phrase caption) {
    return new WritingLines.Line(Field.of(kind, name, Phrase.text(who, what)), caption);
  }
}
