package io.github.brinewright.job;

import java.util.Locale;

/** What can be wrong in a job. Each has its words in the bundle {@code problems}. */
public enum ProblemCode {
  /** A file that must be there is not; where it was looked for. */
  NO_FILE,
  /** A file is too large; the most megabytes. */
  FILE_TOO_LARGE,
  /** A line is too long; the most characters. */
  LINE_TOO_LONG,
  /** A file has too many rows; the most. */
  TOO_MANY_ROWS,
  /** A header has too many columns; its own number and the most. */
  TOO_MANY_COLUMNS,
  /** A file was changed while it was read. */
  FILE_CHANGED,
  /** A file cannot be read; what the machine says. */
  FILE_UNREADABLE,
  /** A file is UTF-16. */
  UTF_16,
  /** A byte is not UTF-8. */
  NOT_UTF_8,
  /** A table stands there in two forms; the name of the other file. */
  TABLE_TWICE,
  /** What reads tables of this form is missing. */
  NO_TABLE_FORMAT,
  /** A cell of a spreadsheet has no value, such as a formula that came to an error. */
  CELL_WITHOUT_VALUE,
  /** A file has no first row. */
  FILE_EMPTY,
  /** A quote is not closed, or a field has over 20 lines; what the reader says. */
  QUOTE_OPEN,
  /** Columns are separated by semicolons. */
  SEMICOLONS,
  /** The dealer's file is no properties file; what the reader says. */
  NOT_PROPERTIES,
  /** There is no row for a home. */
  NO_HOME,
  /** There is no row for a unit. */
  NO_UNIT,
  /** There is no row for a tariff. */
  NO_TARIFF,

  /** A column that must be there is not. */
  COLUMN_MISSING,
  /** A column has no known name; what may be meant. */
  COLUMN_UNKNOWN,
  /** A column stands twice in the header. */
  COLUMN_TWICE,
  /** A key of the dealer's file is not known; what may be meant. */
  KEY_UNKNOWN,
  /** A row has another number of fields than the header: its own and that of the header. */
  FIELD_COUNT,
  /** A field is too long; the most characters. */
  FIELD_TOO_LONG,

  /** A text would run as a formula in a spreadsheet. */
  FORMULA,
  /** A text has a control character, or another that cannot be seen: these. */
  CONTROL_CHARACTER,
  /** A text has characters that documents cannot print: these. */
  NOT_PRINTABLE,
  /** A name cannot be printed, and there is none in its place: its characters, the column. */
  LATIN_NEEDED,
  /** A short name has other characters than letters, digits, hyphens and underscores. */
  NOT_A_SHORT_NAME,
  /** A cell has a comma where a number is asked for. */
  COMMA,
  /** A cell is not a number. */
  NOT_A_NUMBER,
  /** A cell is no result of a laboratory. */
  NOT_A_LAB_RESULT,
  /** A reporting limit is zero. */
  REPORTING_LIMIT_ZERO,
  /** A number is outside its range: lowest and highest. */
  OUT_OF_RANGE,
  /** A number is not whole: lowest and highest. */
  NOT_WHOLE,
  /** A number is needed: lowest and highest. */
  NUMBER_NEEDED,
  /** A text is needed. */
  TEXT_NEEDED,
  /** Money has more decimals than its currency: the currency. */
  TOO_MANY_DECIMALS,
  /** A cell is not a date. */
  NOT_A_DATE,
  /** A cell does not hold pairs of a number and a name. */
  NOT_PAIRS,
  /** A count before a name is not a whole number; the highest. */
  NOT_A_COUNT,
  /** A word is none of those that may be written: these. */
  NOT_A_CHOICE,
  /** An id is not known; what may be meant. */
  ID_UNKNOWN,
  /** An id stands in an earlier row too. */
  ID_TWICE,
  /** A locale is none that documents are written in. */
  NOT_A_LOCALE,
  /** A cell is not a place. */
  NOT_A_PLACE,
  /** A cell is not a currency. */
  NOT_A_CURRENCY,
  /** A cell is not a colour. */
  NOT_A_COLOUR,

  /** Exactly one of two hardnesses is needed; the other column. */
  HARDNESS_NEEDED,
  /** The hardness blended to is not below that of the water that is softened: that, in gpg. */
  TARGET_TOO_HIGH,
  /** Dosages or a rating are needed; the other column. */
  CAPACITY_NEEDED,
  /** Tanks do not fit their arrangement: the fewest and the most of it. */
  TANKS_UNFIT,
  /** Tanks that take turns have another control than metered, at once: its word. */
  TWIN_CONTROL,
  /** A dosage lies outside the table of its resin: lowest and highest. */
  DOSAGE_OUTSIDE_TABLE,
  /** A resin has a single dosage. */
  RESIN_ONE_DOSAGE,
  /** Dosage or capacity of a resin does not rise from row to row. */
  RESIN_NOT_RISING,
  /** A resin gives more for each pound of salt as the dosage rises. */
  RESIN_TOO_STEEP,
  /** A resin gives more than chemistry allows: the limit. */
  RESIN_ABOVE_LIMIT,
  /** Prices of a rate and the steps between them do not go together: both numbers. */
  STEP_COUNT,
  /** Steps of a rate do not rise. */
  STEPS_NOT_RISING,

  /** A word is no weekday; what may be meant. */
  NOT_A_WEEKDAY,
  /** A reading of a meter is no date with a counter. */
  NOT_A_READING,
  /** There is a single reading of a meter. */
  READING_ALONE,
  /** A reading has not a later date than the one before it: that one. */
  READINGS_UNORDERED,
  /** A meter stood lower than at the reading before: that one. */
  READING_FALLS,
  /** It is said which meter was read, but not what it stood at: the column that says so. */
  READINGS_NEEDED,
  /** Something is said of a softener in the house, but not what sets it off: the words for it. */
  PRESENT_CONTROL_NEEDED,
  /** A setting does not go with the control: the column of that, and what stands there. */
  SETTING_UNFIT,
  /** A clock of weekdays has none. */
  WEEKDAYS_NEEDED,
  /** A meter has no setting; the other column that sets it. */
  METER_SETTING_NEEDED,
  /** A meter is set in two ways; the other column. */
  METER_SET_TWICE,
  /** A reserve is not below what the meter lets pass: that, in gallons. */
  RESERVE_TOO_LARGE,
  /** Nothing is known of the bed in the house; the other columns that tell it. */
  PRESENT_BED_NEEDED,
  /** The salt of a regeneration is said in two ways; the other column. */
  PRESENT_SALT_TWICE,

  /** An item has a price and a percentage, or neither; the other column. */
  PRICE_NEEDED,
  /** An item that is sold has a percentage; the kinds that may. */
  PERCENT_UNFIT,
  /** Findings are named for an item that is not required: the word for it. */
  NEED_UNFIT,
  /** Items are named for one that is no bundle: the word for it. */
  KIND_UNFIT,

  /** The library refuses it; in its words, for developers. */
  REFUSED,

  /** The picture is not in the job. */
  PICTURE_MISSING,
  /** The picture has more than 2 MB. */
  PICTURE_TOO_LARGE,
  /** The file is neither PNG nor JPEG. */
  NOT_A_PICTURE,
  /** The picture has too many pixels: the most on a side. */
  PICTURE_TOO_MANY_PIXELS,
  /** The picture is damaged, or of a kind that cannot be drawn. */
  PICTURE_DAMAGED;

  /** Key of its words. */
  String key() {
    return "problem." + name().toLowerCase(Locale.ROOT);
  }
}
