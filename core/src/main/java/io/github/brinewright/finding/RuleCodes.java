package io.github.brinewright.finding;

import java.util.regex.Pattern;

/** What a code of a rule may look like. */
final class RuleCodes {
  private static final Pattern CODE = Pattern.compile("[a-z][a-z0-9-]{0,59}");

  private RuleCodes() {}

  static String require(String code) {
    if (!CODE.matcher(code).matches()) {
      throw new IllegalArgumentException(
          "the code \""
              + code
              + "\" of a rule must be 1 to 60 lower-case letters, digits and hyphens, beginning"
              + " with a letter");
    }
    return code;
  }
}
