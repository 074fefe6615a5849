package io.github.brinewright.page;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what stands in the fields of a page, as a browser would. */
final class Fields {
  private static final Pattern INPUT =
      Pattern.compile("<input id=\"field-[^\"]*\" name=\"([^\"]*)\" value(?:=\"([^\"]*)\")? type");
  private static final Pattern SELECT =
      Pattern.compile("<select id=\"field-[^\"]*\" name=\"([^\"]*)\".*?</select>");
  private static final Pattern CHOSEN = Pattern.compile("value(?:=\"([^\"]*)\")? selected");

  private Fields() {}

  static Map<String, String> in(String page) {
    Map<String, String> fields = new LinkedHashMap<>();
    INPUT.matcher(page).results().forEach(each -> put(fields, each.group(1), each.group(2)));
    SELECT
        .matcher(page)
        .results()
        .forEach(
            each -> {
              Matcher chosen = CHOSEN.matcher(each.group());
              put(fields, each.group(1), chosen.find() ? chosen.group(1) : null);
            });
    return fields;
  }

  private static void put(Map<String, String> fields, String name, String value) {
    String text = value == null ? "" : value;
    fields.put(
        "field." + name,
        text.replace("&lt;", "<")
            .replace("&gt;", ">")
            .replace("&quot;", "\"")
            .replace("&#39;", "'")
            .replace("&amp;", "&"));
  }
}
