package io.github.brinewright.words;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Redoes printed arithmetic as a reader with a pocket calculator would. Each number stands for all
 * numbers that round to it, so the result is an interval.
 */
final class PrintedArithmetic {
  /** All numbers that the printed one may stand for. */
  record Interval(double low, double middle, double high) {
    static Interval of(String printed) {
      String plain = printed.replace(",", "");
      int point = plain.indexOf('.');
      int decimals = point < 0 ? 0 : plain.length() - point - 1;
      double value = Double.parseDouble(plain);
      double half = 0.5 * Math.pow(10, -decimals);
      return new Interval(value - half, value, value + half);
    }

    boolean meets(Interval other) {
      double slack = 1e-9 * Math.max(1, Math.abs(middle));
      return low <= other.high + slack && other.low <= high + slack;
    }
  }

  private static final Pattern TOKEN = Pattern.compile("ln|[+×÷−()^]|-?\\$?[\\d,]*\\.?\\d+");
  private static final List<String> PRECEDENCE = List.of("+", "−", "×", "÷", "^");

  private final Deque<Interval> values = new ArrayDeque<>();
  private final Deque<String> operators = new ArrayDeque<>();

  private PrintedArithmetic() {}

  static Interval evaluate(String printed) {
    PrintedArithmetic arithmetic = new PrintedArithmetic();
    Matcher tokens = TOKEN.matcher(printed);
    while (tokens.find()) {
      arithmetic.take(tokens.group());
    }
    while (!arithmetic.operators.isEmpty()) {
      arithmetic.apply(arithmetic.operators.pop());
    }
    return arithmetic.values.pop();
  }

  private void take(String token) {
    switch (token) {
      case "(", "ln" -> operators.push(token);
      case ")" -> {
        while (!operators.peek().equals("(")) {
          apply(operators.pop());
        }
        operators.pop();
        if ("ln".equals(operators.peek())) {
          apply(operators.pop());
        }
      }
      case "+", "−", "×", "÷", "^" -> {
        while (!operators.isEmpty() && rank(operators.peek()) >= rank(token)) {
          apply(operators.pop());
        }
        operators.push(token);
      }
      default -> values.push(Interval.of(token.replace("$", "")));
    }
  }

  private static int rank(String operator) {
    return operator.equals("(") ? -1 : operator.equals("ln") ? 9 : PRECEDENCE.indexOf(operator) / 2;
  }

  private void apply(String operator) {
    Interval b = values.pop();
    if (operator.equals("ln")) {
      values.push(new Interval(Math.log(b.low()), Math.log(b.middle()), Math.log(b.high())));
      return;
    }
    Interval a = values.pop();
    values.push(
        switch (operator) {
          case "+" -> new Interval(a.low() + b.low(), a.middle() + b.middle(), a.high() + b.high());
          case "−" -> new Interval(a.low() - b.high(), a.middle() - b.middle(), a.high() - b.low());
          case "^" -> corners(a, exact(b), Math::pow);
          case "×" -> corners(a, b, (x, y) -> x * y);
          default -> corners(a, b, (x, y) -> x / y);
        });
  }

  /** An exponent is printed in full. */
  private static Interval exact(Interval printed) {
    return new Interval(printed.middle(), printed.middle(), printed.middle());
  }

  private static Interval corners(
      Interval a, Interval b, java.util.function.DoubleBinaryOperator of) {
    double[] all = {
      of.applyAsDouble(a.low(), b.low()),
      of.applyAsDouble(a.low(), b.high()),
      of.applyAsDouble(a.high(), b.low()),
      of.applyAsDouble(a.high(), b.high())
    };
    double low = java.util.Arrays.stream(all).min().orElseThrow();
    double high = java.util.Arrays.stream(all).max().orElseThrow();
    return new Interval(low, of.applyAsDouble(a.middle(), b.middle()), high);
  }
}
