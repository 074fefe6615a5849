package io.github.brinewright.words;

import io.github.brinewright.service.Advice;
import io.github.brinewright.service.Fault;
import io.github.brinewright.service.Payback;
import io.github.brinewright.sizing.Assumption;
import io.github.brinewright.trace.Figure;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is said of a present softener. A text may have further sentences under its key with {@code
 * .if-2}, said where the figure of that place is printed as other than zero; {@code .none}, said
 * where none of those is; and {@code .zero}, said alone where the first figure is zero.
 */
final class ServiceWords {
  /** Years beyond which nobody can say when a price has come back. */
  private static final long MOST_YEARS = 30;

  private static final int HALF_DAY = 12;

  private final Wording words;
  private final Messages messages;

  ServiceWords(Wording words, Messages messages) {
    this.words = words;
    this.messages = messages;
  }

  String fault(Fault fault) {
    return said("fault." + fault.code(), fault.figures());
  }

  String assumption(Assumption assumption) {
    return said("assumption." + assumption.kind().code(), assumption.figures());
  }

  String advice(Advice advice) {
    return messages.get("advice." + advice.name());
  }

  private String said(String key, List<Figure> figures) {
    if (messages.has(key + ".zero") && words.isZero(figures.get(0))) {
      return text(key + ".zero", figures);
    }
    List<String> sentences = new ArrayList<>(List.of(text(key, figures)));
    sentences.addAll(consequences(key, figures));
    return String.join(" ", sentences);
  }

  private List<String> consequences(String key, List<Figure> figures) {
    List<String> all = new ArrayList<>();
    for (int place = 0; place < figures.size(); place++) {
      String tail = key + ".if-" + place;
      if (messages.has(tail) && !words.isZero(figures.get(place))) {
        all.add(text(tail, figures));
      }
    }
    if (all.isEmpty() && messages.has(key + ".none")) {
      all.add(text(key + ".none", figures));
    }
    return all;
  }

  private String text(String key, List<Figure> figures) {
    return words.text(key, figures.toArray(Figure[]::new));
  }

  /** Twelve or twenty-four hours, as the language has them; noon and midnight by name. */
  String clock(LocalTime time) {
    if (time.equals(LocalTime.MIDNIGHT)) {
      return messages.get("clock.midnight");
    } else if (time.equals(LocalTime.NOON)) {
      return messages.get("clock.noon");
    }
    return Messages.fill(
        messages.get(time.getHour() < HALF_DAY ? "clock.am" : "clock.pm"),
        List.of(whole(shown(time.getHour())), minutes(time)));
  }

  private int shown(int hour) {
    boolean twice = messages.get("clock.hours").equals(Integer.toString(HALF_DAY));
    return twice ? (hour + HALF_DAY - 1) % HALF_DAY + 1 : hour;
  }

  private String whole(int hour) {
    return words.number(hour, 0);
  }

  private String minutes(LocalTime time) {
    return whole(time.getMinute() / 10) + whole(time.getMinute() % 10);
  }

  /** In whole years, from the low end to the high one. */
  String payback(Payback payback) {
    OptionalDouble low = payback.low();
    if (low.isEmpty() || (payback.never() && years(low) > MOST_YEARS)) {
      return messages.get("payback.never");
    }
    if (payback.never()) {
      return after(years(low), "payback.bestCase");
    }
    if (years(low) > MOST_YEARS) {
      return messages.get("payback.beyond");
    }
    return payback.high().isEmpty() ? orElse(payback, "payback.orNever") : range(payback);
  }

  /** As computed, with the earliest year; and what becomes of it at the other end. */
  private String orElse(Payback payback, String key) {
    long middle = years(payback.years());
    if (middle == 0 || middle > MOST_YEARS) {
      return after(years(payback.low()), key + ".open");
    }
    long earliest = Math.max(1, years(payback.low()));
    return words.text(key, Figure.of(middle, 0), Figure.of(earliest, 0));
  }

  private String range(Payback payback) {
    double exact = payback.high().getAsDouble();
    long low = years(payback.low());
    long high = years(payback.high());
    if (exact == 0) {
      return messages.get("payback.atOnce");
    } else if (high > MOST_YEARS) {
      return orElse(payback, "payback.orBeyond");
    } else if (low == 0) {
      return counted("payback.within", Math.max(1, high));
    }
    return low == high ? counted("payback.about", low) : between(low, high);
  }

  private String between(long low, long high) {
    return words.text("payback.between", Figure.of(low, 0), Figure.of(high, 0));
  }

  /** The first year counts as within one. */
  private String after(long years, String key) {
    return counted(years == 0 ? key + "Soon" : key, years);
  }

  private String counted(String key, long years) {
    return words.text(key, Figure.of(years, 0));
  }

  private static long years(OptionalDouble exact) {
    return Math.round(exact.getAsDouble());
  }
}
