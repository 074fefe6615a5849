package io.github.brinewright.comparison;

import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Verdict;
import io.github.brinewright.finding.VerdictKind;
import io.github.brinewright.home.Site;
import io.github.brinewright.softener.Control;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What came of one home of many, in a line: small, so that thousands may be kept.
 *
 * <pre>{@code
 * HomeOutcome outcome = HomeOutcome.of(job.compare(home), "proposal-A1.pdf");
 * }</pre>
 */
public final class HomeOutcome {
  private final String home;
  private final String customer;
  private final @Nullable Verdict verdict;
  private final @Nullable Quoted quoted;
  private final List<Finding> cautions;
  private final String file;
  private final String failure;

  private record Quoted(String softener, Control control, Money price, Money year) {}

  private HomeOutcome(
      Site site, Verdict verdict, @Nullable Quoted quoted, List<Finding> cautions, String file) {
    home = site.id();
    customer = site.contact().name();
    this.verdict = verdict;
    this.quoted = quoted;
    this.cautions = cautions;
    this.file = file;
    failure = "";
  }

  private HomeOutcome(String home, String failure) {
    this.home = home;
    customer = "";
    verdict = null;
    quoted = null;
    cautions = List.of();
    file = "";
    this.failure = failure;
  }

  /**
   * {@return what came of a home}
   *
   * @param comparison of the home
   * @param file name of the document written
   */
  public static HomeOutcome of(Comparison comparison, String file) {
    return new HomeOutcome(
        comparison.home().site(),
        comparison.verdict(),
        comparison.recommended().map(HomeOutcome::quoted).orElse(null),
        comparison.cautions(),
        file);
  }

  private static Quoted quoted(Candidate candidate) {
    return new Quoted(
        candidate.softener().name(),
        candidate.setup().control(),
        candidate.quote().total(),
        candidate.yearly().total());
  }

  /**
   * {@return that nothing came of a home}
   *
   * @param home its id, or where its row stands
   * @param why in words
   */
  public static HomeOutcome failed(String home, String why) {
    return new HomeOutcome(home, why);
  }

  /** {@return the id of the home, or where its row stands} */
  public String home() {
    return home;
  }

  /** {@return who lives there; empty where that is not known} */
  public String customer() {
    return customer;
  }

  /** {@return the verdict; empty where nothing came of the home} */
  public Optional<VerdictKind> verdict() {
    return Optional.ofNullable(verdict).map(Verdict::kind);
  }

  /** {@return the reasons of the verdict, the gravest first} */
  public List<Finding> reasons() {
    return verdict == null ? List.of() : verdict.reasons();
  }

  /** {@return cautions on the home and on what is recommended} */
  public List<Finding> cautions() {
    return cautions;
  }

  /** {@return the name of the recommended softener; empty without one} */
  public Optional<String> softener() {
    return of(Quoted::softener);
  }

  /** {@return the control that it is recommended with; empty without one} */
  public Optional<Control> control() {
    return of(Quoted::control);
  }

  /** {@return its price with tax and what comes with it; empty without one} */
  public Optional<Money> price() {
    return of(Quoted::price);
  }

  /** {@return what it costs in a year; empty without one} */
  public Optional<Money> yearlyCost() {
    return of(Quoted::year);
  }

  private <T> Optional<T> of(Function<Quoted, T> part) {
    return Optional.ofNullable(quoted).map(part);
  }

  /** {@return the name of the document written; empty where none was} */
  public String file() {
    return file;
  }

  /** {@return why nothing came of the home; empty where something did} */
  public String failure() {
    return failure;
  }
}
