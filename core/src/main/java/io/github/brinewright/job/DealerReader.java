package io.github.brinewright.job;

import io.github.brinewright.cost.Credit;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.finding.Limits;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.words.UnitSystem;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/** Reads dealer.properties: name, look, terms, tax and credit. */
final class DealerReader {
  static final String FILE = "dealer.properties";
  private static final String TERMS_IN = "terms_";
  private static final List<String> PLAIN =
      List.of(
          "name",
          "street",
          "town",
          "phone",
          "email",
          "web",
          "license",
          "accent",
          "terms",
          "logo",
          "valid_days",
          "currency",
          "locale",
          "paper",
          "units",
          "tax_percent",
          "tax_on_installation",
          "deposit_percent",
          "credit_percent",
          "credit_months",
          "years",
          "discount_percent",
          "shortest_interval_days",
          "lowest_pressure_psi",
          "reserve_risk_percent");

  /** The keys, with terms in each language. */
  private static final List<String> KNOWN =
      Stream.concat(PLAIN.stream(), Languages.CODES.stream().map(code -> TERMS_IN + code)).toList();

  private final Row row;

  private final JobFiles files;

  private DealerReader(Row row, JobFiles files) {
    this.row = row;
    this.files = files;
  }

  /** What the file says, with the usual values for what it leaves out. */
  record Reading(Dealer dealer, Terms terms, Limits limits) {}

  static Reading read(JobFiles files, List<Problem> problems) {
    Row row = new Row(FILE, 0, problems);
    if (files.has(FILE)) {
      TextFile.read(files, FILE, problems).ifPresent(text -> load(text, row));
    }
    DealerReader reader = new DealerReader(row, files);
    return new Reading(reader.dealer(), reader.terms(), reader.limits());
  }

  private static void load(String text, Row row) {
    Properties properties = new Properties();
    try {
      properties.load(new StringReader(text));
    } catch (IOException | IllegalArgumentException malformed) {
      row.note("", "", "is not a properties file: " + malformed.getMessage());
    }
    Map<String, String> values = new LinkedHashMap<>();
    for (String key : properties.stringPropertyNames()) {
      if (KNOWN.contains(key)) {
        values.put(key, properties.getProperty(key).strip());
      } else {
        row.note(key, "", "is not a known key; " + Nearest.hint(key, KNOWN));
      }
    }
    row.with(values);
  }

  private Dealer dealer() {
    Dealer usual = Dealer.UNNAMED;
    String accent = row.text("accent").orElse(usual.accent());
    if (!accent.matches("#[0-9A-Fa-f]{6}")) {
      row.note("accent", accent, "is not a colour; write # and six hexadecimal digits");
    }
    Locale locale = Languages.in(row, "locale").orElse(usual.locale());
    return new Dealer(
        row.text("name").orElse(usual.name()),
        contact(),
        row.text("license").orElse(""),
        accent,
        row.text("terms").orElse(""),
        termsByLanguage(),
        (int) row.number("valid_days", 1, 365, usual.validDays()),
        currency(usual.currency()),
        locale,
        row.choice("paper", Dealer.Paper.class).orElse(usual.paper()),
        row.choice("units", UnitSystem.class).orElse(usual.units()),
        row.text("logo").flatMap(this::logo));
  }

  private Optional<Logo> logo(String name) {
    if (!name.matches("[\\p{L}\\p{N}._-]{1,80}") || !files.has(name)) {
      row.note("logo", name, "is not in the job folder; write the name of a file beside this one");
      return Optional.empty();
    }
    try {
      Optional<Logo> logo = Logo.read(name, files.read(name));
      if (logo.isEmpty()) {
        row.note("logo", name, "is no PNG or JPEG of at most 2 MB and 4000 pixels a side");
      }
      return logo;
    } catch (IOException unreadable) {
      row.note("logo", name, "cannot be read: " + unreadable.getMessage());
      return Optional.empty();
    }
  }

  private List<String> contact() {
    return List.of("street", "town", "phone", "email", "web").stream()
        .map(row::text)
        .flatMap(Optional::stream)
        .toList();
  }

  /** Terms by language; the key without a language holds for those that have none. */
  private Map<String, String> termsByLanguage() {
    Map<String, String> terms = new LinkedHashMap<>();
    for (String code : Languages.CODES) {
      row.text(TERMS_IN + code).ifPresent(text -> terms.put(code, text));
    }
    return terms;
  }

  private CurrencyUnit currency(CurrencyUnit usual) {
    String code = row.text("currency").orElse(usual.getCode());
    try {
      return CurrencyUnit.of(code);
    } catch (IllegalCurrencyException unknown) {
      row.note("currency", code, "is not a currency; write its three letters, as in USD");
      return usual;
    }
  }

  private Terms terms() {
    Terms.Builder terms =
        Terms.builder()
            .taxRate(fraction("tax_percent", 50))
            .taxOnInstallation(row.yes("tax_on_installation", false))
            .depositShare(fraction("deposit_percent", 100));
    credit().ifPresent(terms::financing);
    return terms
        .years((int) row.number("years", 1, 30, Terms.USUAL.years()))
        .discountRate(
            row.number("discount_percent", -5, 20, 100 * Terms.USUAL.discountRate()) / 100)
        .build();
  }

  private BigDecimal fraction(String key, double highestPercent) {
    return row.decimal(key, 0, highestPercent, "0").movePointLeft(2);
  }

  private Optional<Credit> credit() {
    if (!row.has("credit_months")) {
      return Optional.empty();
    }
    int months = (int) row.number("credit_months", 1, 240, 1);
    return Optional.of(new Credit(fraction("credit_percent", 60), months));
  }

  private Limits limits() {
    return Limits.builder()
        .shortestDays(row.number("shortest_interval_days", 1, 7, Limits.USUAL.shortestDays()))
        .lowestPressure(
            Pressure.ofPsi(
                row.number("lowest_pressure_psi", 1, 80, Limits.USUAL.lowestPressure().psi())))
        .reserveRisk(row.number("reserve_risk_percent", 0.01, 50, 0) / 100)
        .build();
  }
}
