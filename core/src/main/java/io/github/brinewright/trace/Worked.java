package io.github.brinewright.trace;

import io.github.brinewright.quantity.Quantity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A value together with the step that leads to it. The formula is given the very inputs that the
 * step prints, so the two cannot drift apart; the step itself is built only when it is asked for.
 *
 * <p>An input is a quantity, a number, a time, a figure, {@link Parts} or a collection of these.
 * Example:
 *
 * <pre>{@code
 * Worked<HardnessAmount> load =
 *     Worked.of(DAILY_LOAD, DEFINITION, use, hardness, (volume, gpg) -> gpg.in(volume));
 * }</pre>
 *
 * @param <T> what the value is
 */
public final class Worked<T> implements Explained {
  /** A formula of three inputs. */
  @FunctionalInterface
  public interface OfThree<A, B, C, T> {
    /**
     * {@return what the formula gives}
     *
     * @param a the first input
     * @param b the second input
     * @param c the third input
     */
    T apply(A a, B b, C c);
  }

  /** A formula of four inputs. */
  @FunctionalInterface
  public interface OfFour<A, B, C, D, T> {
    /**
     * {@return what the formula gives}
     *
     * @param a the first input
     * @param b the second input
     * @param c the third input
     * @param d the fourth input
     */
    T apply(A a, B b, C c, D d);
  }

  /** A formula of five inputs. */
  @FunctionalInterface
  public interface OfFive<A, B, C, D, E, T> {
    /**
     * {@return what the formula gives}
     *
     * @param a the first input
     * @param b the second input
     * @param c the third input
     * @param d the fourth input
     * @param e the fifth input
     */
    T apply(A a, B b, C c, D d, E e);
  }

  private final StepKind kind;
  private final Source source;
  private final T value;
  private final Object[] inputs;

  private Worked(StepKind kind, Source source, T value, Object... inputs) {
    this.kind = kind;
    this.source = source;
    this.value = value;
    this.inputs = inputs;
  }

  /**
   * Applies a formula to one input.
   *
   * @param <A> kind of the first input
   * @param <T> kind of the result
   * @param kind which formula
   * @param source who states the formula
   * @param a the first input
   * @param formula what makes the result of the inputs
   * @return the result, with its step
   */
  public static <A, T> Worked<T> of(StepKind kind, Source source, A a, Function<A, T> formula) {
    return new Worked<>(kind, source, formula.apply(a), a);
  }

  /**
   * Applies a formula to two inputs.
   *
   * @param <A> kind of the first input
   * @param <B> kind of the second input
   * @param <T> kind of the result
   * @param kind which formula
   * @param source who states the formula
   * @param a the first input
   * @param b the second input
   * @param formula what makes the result of the inputs
   * @return the result, with its step
   */
  public static <A, B, T> Worked<T> of(
      StepKind kind, Source source, A a, B b, BiFunction<A, B, T> formula) {
    return new Worked<>(kind, source, formula.apply(a, b), a, b);
  }

  /**
   * Applies a formula to three inputs.
   *
   * @param <A> kind of the first input
   * @param <B> kind of the second input
   * @param <C> kind of the third input
   * @param <T> kind of the result
   * @param kind which formula
   * @param source who states the formula
   * @param a the first input
   * @param b the second input
   * @param c the third input
   * @param formula what makes the result of the inputs
   * @return the result, with its step
   */
  public static <A, B, C, T> Worked<T> of(
      StepKind kind, Source source, A a, B b, C c, OfThree<A, B, C, T> formula) {
    return new Worked<>(kind, source, formula.apply(a, b, c), a, b, c);
  }

  /**
   * Applies a formula to four inputs.
   *
   * @param <A> kind of the first input
   * @param <B> kind of the second input
   * @param <C> kind of the third input
   * @param <D> kind of the fourth input
   * @param <T> kind of the result
   * @param kind which formula
   * @param source who states the formula
   * @param a the first input
   * @param b the second input
   * @param c the third input
   * @param d the fourth input
   * @param formula what makes the result of the inputs
   * @return the result, with its step
   */
  public static <A, B, C, D, T> Worked<T> of(
      StepKind kind, Source source, A a, B b, C c, D d, OfFour<A, B, C, D, T> formula) {
    return new Worked<>(kind, source, formula.apply(a, b, c, d), a, b, c, d);
  }

  /**
   * Applies a formula to five inputs.
   *
   * @param <A> kind of the first input
   * @param <B> kind of the second input
   * @param <C> kind of the third input
   * @param <D> kind of the fourth input
   * @param <E> kind of the fifth input
   * @param <T> kind of the result
   * @param kind which formula
   * @param source who states the formula
   * @param a the first input
   * @param b the second input
   * @param c the third input
   * @param d the fourth input
   * @param e the fifth input
   * @param formula what makes the result of the inputs
   * @return the result, with its step
   */
  public static <A, B, C, D, E, T> Worked<T> of(
      StepKind kind, Source source, A a, B b, C c, D d, E e, OfFive<A, B, C, D, E, T> formula) {
    return new Worked<>(kind, source, formula.apply(a, b, c, d, e), a, b, c, d, e);
  }

  /** {@return what the formula gives} */
  public T value() {
    return value;
  }

  /** {@return how it was worked out} */
  public Step step() {
    List<Figure> figures = new ArrayList<>(inputs.length);
    for (Object input : inputs) {
      add(input, figures);
    }
    return new Step(kind, figures, figure(value), source);
  }

  @Override
  public List<Step> steps() {
    return List.of(step());
  }

  private static void add(Object input, List<Figure> figures) {
    if (input instanceof Parts parts) {
      figures.addAll(parts.figures());
    } else if (input instanceof Collection<?> several) {
      several.forEach(each -> add(each, figures));
    } else {
      figures.add(figure(input));
    }
  }

  private static Figure figure(Object value) {
    if (value instanceof Quantity<?> quantity) {
      return Figure.of(quantity);
    } else if (value instanceof Duration time) {
      return Figure.of(time);
    } else if (value instanceof Integer whole) {
      return Figure.of(whole.intValue());
    } else if (value instanceof Double number) {
      return Figure.of(number.doubleValue());
    } else if (value instanceof DayCount days) {
      return Figure.days(days.count());
    } else if (value instanceof Figure figure) {
      return figure;
    }
    throw new IllegalArgumentException("no figure can be made of a " + value.getClass().getName());
  }

  /** The value and what it was made of, for developers. */
  @Override
  public String toString() {
    return kind + " of " + List.of(inputs) + " = " + value;
  }
}
