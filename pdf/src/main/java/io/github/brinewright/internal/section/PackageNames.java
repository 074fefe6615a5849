package io.github.brinewright.internal.section;

import io.github.brinewright.cost.Item;
import io.github.brinewright.model.Field;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.sale.PackageKind;
import io.github.brinewright.sale.SalePackage;
import io.github.brinewright.service.Advice;
import io.github.brinewright.trace.Figure;
import java.util.Locale;

/**
 * How packages and what may be added to them are named, and the fields by which they are chosen.
 *
 * @param subject they belong to
 */
record PackageNames(Subject subject) {
  private static final String CHOSEN = "package";

  /** Why it is offered, with the unit. */
  Phrase name(SalePackage offered) {
    if (offered.kind() == PackageKind.KEEP) {
      boolean meter = subject.service() != null && subject.service().advice() == Advice.ADD_METER;
      return Phrase.text(meter ? "choices.KEEP_METER" : "choices.KEEP");
    }
    return Phrase.text(why(offered.kind()), Phrase.plain(offered.candidate().softener().name()));
  }

  private String why(PackageKind kind) {
    String key = "choices." + kind.name();
    boolean amongNew = kind == PackageKind.RECOMMENDED || kind == PackageKind.CHEAPEST;
    return amongNew && subject.keeps() ? key + "_NEW" : key;
  }

  /** The place to mark a package; read aloud with its price. */
  Field mark(SalePackage offered) {
    return Field.oneOf(CHOSEN, priced(offered), code(offered.kind()));
  }

  /** A package with its price. */
  Phrase priced(SalePackage offered) {
    return Phrase.text("choices.priced", name(offered), Phrase.of(Figure.of(offered.total())));
  }

  /** The box to tick for something to add; read aloud with its price. */
  Field tick(Item item) {
    Phrase label =
        Phrase.text(
            item.kind().reduces() ? "choices.less" : "choices.priced",
            name(item),
            Phrase.of(Figure.of(new Extra(subject, item).price().abs())));
    return Field.of(Field.Kind.TICK, "extra_" + item.id().replace('.', '-'), label);
  }

  /** An item with its number where there are several. */
  static Phrase name(Item item) {
    Phrase name = new Phrase.Local(item.name());
    return item.quantity() == 1
        ? name
        : Phrase.text("choices.several", Phrase.of(Figure.of(item.quantity())), name);
  }

  static String code(PackageKind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }
}
