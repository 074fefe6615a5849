package io.github.brinewright.cli;

import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.ByVolume;
import io.github.brinewright.home.PresentControl.Metered;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/** What a visit found of the softener in the house, for a terminal: a label and what it is. */
final class FoundLines {
  private static final int LABEL = 25;
  private static final String ASSUMED = " (assumed)";

  private final FoundSoftener found;
  private final PresentSoftener present;
  private final Wording words;
  private final List<String> lines = new ArrayList<>();

  private FoundLines(FoundSoftener found, Wording words) {
    this.found = found;
    present = found.present();
    this.words = words;
  }

  static List<String> of(FoundSoftener found, Wording words) {
    FoundLines all = new FoundLines(found, words);
    all.add("control", all.control());
    all.add("bed", all.bed());
    all.add("salt each time", all.salt());
    all.tested();
    return all.lines;
  }

  private void tested() {
    present
        .saltBought()
        .ifPresent(bought -> add("salt bought", figure(Figure.of(bought, 0)) + " a year"));
    present.hardnessAfter().ifPresent(after -> add("hardness behind it", figure(Figure.of(after))));
    if (!present.readings().isEmpty()) {
      String meter = present.readMeter() == ReadMeter.HOUSE ? "the house" : "the softener";
      add("meter of " + meter, present.readings().size() + " readings");
    }
  }

  private void add(String label, String text) {
    lines.addAll(Folded.item(Folded.padded("  " + label, LABEL, false), text));
  }

  private String figure(Figure figure) {
    return words.figure(figure);
  }

  private String control() {
    List<String> parts = new ArrayList<>(List.of(words.term(found.control())));
    parts.addAll(setting(present.control()));
    if (found.control() != Control.METERED_AT_ONCE) {
      int hour = present.hour().orElse(BedSettings.USUAL_HOUR);
      String known = present.hour().isPresent() ? "" : ASSUMED;
      parts.add("at " + figure(Figure.of(LocalTime.of(hour, 0))) + known);
    }
    return String.join(", ", parts);
  }

  private List<String> setting(PresentControl control) {
    if (control instanceof PresentControl.Clock clock) {
      return List.of(SettingText.every(clock.days(), words));
    } else if (control instanceof PresentControl.Weekdays weekdays) {
      return List.of(words.weekdays(weekdays.days()));
    }
    return setting((Metered) control);
  }

  private List<String> setting(Metered meter) {
    List<String> parts = new ArrayList<>();
    if (meter instanceof ByVolume volume) {
      parts.add("set to " + figure(Figure.of(volume.set())));
    } else if (meter instanceof ByHardness told) {
      parts.add("set to a hardness of " + figure(Figure.of(told.hardness())));
      told.capacity().ifPresent(set -> parts.add("a capacity of " + figure(Figure.of(set))));
    }
    meter.reserve().ifPresent(held -> parts.add("a reserve of " + figure(Figure.of(held))));
    meter
        .longestDays()
        .ifPresent(days -> parts.add("after " + figure(Figure.days(days, 0)) + " at the latest"));
    return parts;
  }

  private String bed() {
    List<String> parts = new ArrayList<>();
    String known = present.resinVolume().isPresent() ? "" : ASSUMED;
    parts.add(words.resin(found.resinVolume()) + " of resin" + known);
    present.rated().ifPresent(rated -> parts.add("rated at " + figure(Figure.of(rated))));
    parts.add(
        present.ageYears().isPresent()
            ? "age in years " + present.ageYears().getAsInt()
            : "age not known");
    parts.add("it holds about " + figure(Figure.roughly(found.usable())));
    return String.join(", ", parts);
  }

  private String salt() {
    String mass = figure(Figure.of(found.saltPerRegeneration(), 1));
    PresentSalt set = present.salt().orElse(null);
    String way = "";
    if (set instanceof PresentSalt.Refill refill) {
      way = ", by " + figure(Figure.of(refill.time())) + " of refill";
    } else if (set instanceof PresentSalt.Dosed dosed) {
      way = ", by " + figure(Figure.of(dosed.dosage()));
    } else if (set == null) {
      way = found.saltKnown() ? ", from what is bought" : ASSUMED;
    }
    return mass + way + ", " + words.term(present.regenerant());
  }
}
