package io.github.brinewright.area;

import io.github.brinewright.area.HomeReader.Read;
import io.github.brinewright.area.HomeReader.Refused;
import io.github.brinewright.area.Totals.Count;
import java.io.Serializable;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;

/**
 * What the softeners of many homes take, one home after another. Rows are the cells of a table by
 * column; nothing of the library is kept from one row to the next, or sent anywhere.
 *
 * @param assumed what it takes as given
 */
public record AreaStudy(Assumed assumed) implements Serializable {
  /**
   * {@return the sums over all rows}
   *
   * @param rows each a home, or a row with errors, which is counted and told
   */
  public Town of(Iterator<Map<String, String>> rows) {
    Town town = new Town(assumed.draws());
    rows.forEachRemaining(row -> add(town, row));
    return town;
  }

  private void add(Town town, Map<String, String> cells) {
    String district = cells.getOrDefault(HomeReader.DISTRICT, "");
    Totals totals = town.district(district);
    totals.count(Count.ROWS);
    try {
      Read read = HomeReader.read(cells);
      Optional<StudiedHome> home = StudiedHome.of(cells, read, assumed);
      if (home.isPresent()) {
        home.get().addTo(totals, district, assumed);
      } else {
        totals.count(Count.WITHOUT_SOFTENER);
      }
    } catch (Refused refused) {
      totals.count(Count.REFUSED);
      town.problem(refused.getMessage());
    }
  }
}
