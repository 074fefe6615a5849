package io.github.brinewright.job;

import java.util.List;
import java.util.stream.Stream;

/**
 * The columns of one file of a job folder.
 *
 * @param file its name
 * @param required columns that must be there
 * @param optional columns that may be there
 */
record TableShape(String file, List<String> required, List<String> optional) {
  List<String> known() {
    return Stream.concat(required.stream(), optional.stream()).toList();
  }
}
