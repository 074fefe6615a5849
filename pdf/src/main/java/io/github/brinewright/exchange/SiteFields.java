package io.github.brinewright.exchange;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Site;
import io.github.brinewright.words.Wording;
import java.util.LinkedHashMap;
import java.util.Map;

/** The fields of a home: what it asks for, and the verdict on it. */
final class SiteFields {
  private SiteFields() {}

  static Map<String, Object> of(Comparison comparison, Wording words) {
    HomeLoad home = comparison.home();
    Site site = home.site();
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", site.id());
    VerdictFields.add(fields, comparison.verdict(), words);
    fields.put("customer", site.contact().name());
    fields.put("people", site.household().people());
    fields.put("hardnessGpg", Numbers.of(site.water().hardness().grainsPerGallon()));
    fields.put("compensatedHardnessGpg", Numbers.of(home.compensatedHardness().grainsPerGallon()));
    fields.put("designUseGalPerDay", Numbers.of(home.use().design().gallons()));
    fields.put("expectedUseGalPerDay", Numbers.of(home.use().expected().gallons()));
    fields.put("dailyLoadGrains", Numbers.of(home.dailyLoad().grains()));
    fields.put("peakFlowGpm", Numbers.of(home.peakFlow().gallonsPerMinute()));
    fields.put("findings", CandidateFields.findings(comparison.homeFindings(), words));
    return fields;
  }
}
