package io.github.brinewright.internal.section;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.regeneration.MeterSetting;
import io.github.brinewright.trace.Figure;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One way in which a meter is set, as a column.
 *
 * @param column its head
 * @param values by the keys of {@link MeterTable}
 */
record MeterColumn(Table.Column column, Map<String, Phrase> values) {
  static final String VOLUME = "settings.meterVolume";
  static final String HARDNESS = "settings.meterHardness";
  static final String CAPACITY = "settings.meterCapacity";
  static final String RESERVE = "settings.meterReserve";

  /** What is set, in the order of a sheet. */
  static final List<String> KEYS = List.of(VOLUME, HARDNESS, CAPACITY, RESERVE);

  /** A setting that was worked out; nothing of a bed that cannot serve the home. */
  static MeterColumn of(Table.Column column, Optional<MeterSetting> setting) {
    return new MeterColumn(column, setting.map(MeterColumn::values).orElse(Map.of()));
  }

  private static Map<String, Phrase> values(MeterSetting setting) {
    return Map.of(
        VOLUME,
        Phrase.of(Figure.of(setting.volume())),
        HARDNESS,
        new Phrase.InUsUnitsToo(Figure.of(setting.hardness())),
        CAPACITY,
        new Phrase.InUsUnitsToo(Figure.of(setting.capacity())),
        RESERVE,
        Phrase.of(Figure.of(setting.reserve())));
  }

  /** The same without a reserve. */
  MeterColumn withoutReserve() {
    Map<String, Phrase> rest = new HashMap<>(values);
    rest.remove(RESERVE);
    return new MeterColumn(column, rest);
  }
}
