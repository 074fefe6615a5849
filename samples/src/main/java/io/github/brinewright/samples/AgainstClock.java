package io.github.brinewright.samples;

import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.Locale;

/**
 * What a meter does against a clock on the same bed and the same days, weighed in words: salt and
 * hard water both count, and neither is counted in units of the other. Where one saves salt and the
 * other hard water, the dealer's margin of hard water decides.
 *
 * @param clockSalt pounds a year under the clock; zero or more
 * @param meterSalt the same under the meter
 * @param clockHard hard water a year under the clock, in days of mean use; zero or more
 * @param meterHard the same under the meter
 * @param margin hard water that a good choice keeps within, in such days
 */
record AgainstClock(
    double clockSalt, double meterSalt, double clockHard, double meterHard, double margin) {
  /** Salt that differs by less is level, as costs are in a comparison. */
  private static final double LEVEL_SHARE = 0.02;

  /** Hard water that differs by less, in days, is level: half a day in a year. */
  private static final double LEVEL_DAYS = 0.5;

  private static final Wording WORDS = Wording.of(Locale.US, UnitSystem.US);

  private double saltSaved() {
    double saved = clockSalt - meterSalt;
    return Math.abs(saved) <= LEVEL_SHARE * clockSalt ? 0 : saved;
  }

  private double daysSaved() {
    double saved = clockHard - meterHard;
    return Math.abs(saved) < LEVEL_DAYS ? 0 : saved;
  }

  /** Which of the two is better, by what. */
  String verdict() {
    double salt = saltSaved();
    double days = daysSaved();
    if (salt == 0 && days == 0) {
      return "**the clock is as good**";
    }
    if (salt * days < 0) {
      return salt > 0 ? traded("meter", meterHard) : traded("clock", clockHard);
    }
    String better = salt > 0 || days > 0 ? "meter" : "clock";
    return better(better) + both(salt, days);
  }

  /** Begins what is said of the meter. */
  private static String better(String control) {
    return control.equals("meter") ? "**the meter** " : "**the clock**: the meter ";
  }

  /** The one that takes less salt is better as long as its hard water keeps the margin. */
  private String traded(String leaner, double hard) {
    String other = leaner.equals("meter") ? "clock" : "meter";
    String kept = hard <= margin ? " within" : " beyond";
    return better(hard <= margin ? leaner : other)
        + salt(saltSaved())
        + " and "
        + hard(daysSaved())
        + "; the "
        + leaner
        + "'s is"
        + kept
        + " the margin of "
        + WORDS.number(margin, 1)
        + " days";
  }

  private static String both(double salt, double days) {
    if (days == 0) {
      return salt(salt) + "; hard water is level";
    }
    return salt == 0 ? hard(days) + "; salt is level" : salt(salt) + " and " + hard(days);
  }

  private static String salt(double saved) {
    return (saved > 0 ? "saves " : "takes ")
        + WORDS.number(Math.abs(saved), 0)
        + (saved > 0 ? " lb of salt" : " lb more salt");
  }

  private static String hard(double saved) {
    return (saved > 0 ? "spares " : "lets ")
        + WORDS.number(Math.abs(saved), 1)
        + (saved > 0 ? " days of hard water" : " days more hard water pass");
  }
}
