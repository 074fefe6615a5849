package io.github.brinewright.job;

import io.github.brinewright.job.Problem.Argument;
import java.text.Normalizer;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Weekdays separated by spaces, written with three letters. They are understood with more letters
 * and in each language that forms are written in, with or without accents.
 */
final class WeekdayFormat implements Format<Set<DayOfWeek>> {
  /** How the days are written, Monday first. */
  enum Word {
    MON("monday", "lunes", "lundi"),
    TUE("tuesday", "martes", "mardi"),
    WED("wednesday", "miercoles", "mercredi"),
    THU("thursday", "jueves", "jeudi"),
    FRI("friday", "viernes", "vendredi"),
    SAT("saturday", "sabado", "samedi"),
    SUN("sunday", "domingo", "dimanche");

    private final List<String> names;

    Word(String... names) {
      this.names = List.of(names);
    }

    private boolean isMeantBy(String letters) {
      return letters.length() >= FEWEST && names.stream().anyMatch(n -> n.startsWith(letters));
    }
  }

  private static final int FEWEST = 3;
  private static final Pattern ACCENTS_AND_POINTS = Pattern.compile("\\p{M}|\\.");

  private static final Format<List<DayOfWeek>> DAYS =
      NumberFormats.listOf(
          new Format<DayOfWeek>() {
            @Override
            public Optional<DayOfWeek> read(Cell cell) {
              String letters = plain(cell.text());
              return Arrays.stream(Word.values())
                  .filter(word -> word.isMeantBy(letters))
                  .findFirst()
                  .map(word -> DayOfWeek.of(word.ordinal() + 1))
                  .or(() -> unknown(cell));
            }

            @Override
            public String write(DayOfWeek day) {
              return Formats.word(Word.values()[day.ordinal()]);
            }
          });

  private static Optional<DayOfWeek> unknown(Cell cell) {
    String written = cell.text().toLowerCase(Locale.ROOT);
    return cell.refuse(
        ProblemCode.NOT_A_WEEKDAY, new Argument.Meant(written, Formats.words(Word.class)));
  }

  private static String plain(String text) {
    String apart = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD);
    return ACCENTS_AND_POINTS.matcher(apart).replaceAll("");
  }

  @Override
  public Optional<Set<DayOfWeek>> read(Cell cell) {
    return DAYS.read(cell.part(cell.text().replace(',', ' ').strip())).map(EnumSet::copyOf);
  }

  @Override
  public String write(Set<DayOfWeek> days) {
    return DAYS.write(List.copyOf(EnumSet.copyOf(days)));
  }
}
