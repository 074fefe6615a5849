package io.github.brinewright.job;

import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.TableCurve;
import io.github.brinewright.trace.Source;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What a row of resins.csv says: one point of a table, and on its first row the resin. */
final class ResinDraft {
  String id = "";
  String name = "";
  String source = "the dealer's own resin table";
  @Nullable Length bead;
  @Nullable Density density;
  @Nullable SaltDosage dosage;
  @Nullable ResinCapacity capacity;

  /** The resin that this is the first row of. */
  Resin build(List<TableCurve.Point> points) {
    TableCurve curve = new TableCurve(points, Source.given(source));
    return new Resin(
        id,
        name.isEmpty() ? id : name,
        curve,
        Objects.requireNonNull(bead),
        Objects.requireNonNull(density));
  }
}
