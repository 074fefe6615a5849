package io.github.brinewright.exchange;

import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Verdict;
import io.github.brinewright.words.Wording;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The fields of the verdict on a home. */
final class VerdictFields {
  private VerdictFields() {}

  static void add(Map<String, Object> site, Verdict verdict, Wording words) {
    site.put("verdict", CandidateFields.name(verdict.kind()));
    site.put("verdictReasons", reasons(verdict, words));
    site.put("conditionalOnTreatment", verdict.isConditional());
    site.put("provisional", verdict.isProvisional());
  }

  private static List<Map<String, Object>> reasons(Verdict verdict, Wording words) {
    return verdict.reasons().stream().map(reason -> reason(reason, words)).toList();
  }

  private static Map<String, Object> reason(Finding reason, Wording words) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("code", reason.code());
    fields.put("text", words.finding(reason));
    fields.put("change", words.change(reason));
    return fields;
  }
}
