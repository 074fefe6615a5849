package io.github.brinewright.exchange;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Grid;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The fields of the cells of grids: of each control in turn, by size and by dosage. */
final class GridFields {
  private final Comparison comparison;

  GridFields(Comparison comparison) {
    this.comparison = comparison;
  }

  List<Map<String, @Nullable Object>> cells() {
    return comparison.grids().stream()
        .flatMap(grid -> grid.rows().stream())
        .map(Grid.Row::candidates)
        .flatMap(List::stream)
        .map(this::cell)
        .toList();
  }

  private Map<String, @Nullable Object> cell(Candidate candidate) {
    Map<String, @Nullable Object> all = new CandidateFields(candidate).flat();
    Map<String, @Nullable Object> cell = new LinkedHashMap<>();
    List.of(
            "unitId",
            "control",
            "resinFt3",
            "saltDosageLbPerFt3",
            "daysBetweenRegenerations",
            "expectedDaysBetweenRegenerations",
            "saltPerYearLb",
            "waterPerYearGal")
        .forEach(name -> cell.put(name, all.get(name)));
    cell.put("costPerYear", CandidateFields.served(candidate, candidate.yearly().saltAndWater()));
    cell.put("lifeCostTotal", CandidateFields.served(candidate, candidate.life().total()));
    cell.put("hardWaterGalPerYear", all.get("hardWaterGalPerYear"));
    CandidateFields.judged(cell, candidate);
    cell.put("marks", comparison.marks(candidate).stream().map(CandidateFields::name).toList());
    return cell;
  }
}
