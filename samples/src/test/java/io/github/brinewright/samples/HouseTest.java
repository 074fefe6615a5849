package io.github.brinewright.samples;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The picture of the packages in the developers' page is drawn from what the classes use. */
class HouseTest {
  private static final String ROOT = "io.github.brinewright.";
  private static final Path PAGE = Path.of("../DEVELOPERS.md");
  private static final String START = "<!-- house -->\n";
  private static final String END = "<!-- end -->";
  private static final List<String> SOURCES =
      List.of("../core", "../core/xlsx", "../pdf", "../pdf/page", "../pdf/cli");
  private static final Pattern FIRST_SENTENCE =
      Pattern.compile("/\\*\\*\\s+(?:\\* )?(.*?\\.)(?:\\s|\\*/)", Pattern.DOTALL);

  private final Map<String, Set<String>> uses = uses();

  private static Map<String, Set<String>> uses() {
    Map<String, Set<String>> uses = new TreeMap<>();
    for (JavaClass each :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("io.github.brinewright")) {
      Set<String> of = uses.computeIfAbsent(room(each), name -> new TreeSet<>());
      each.getDirectDependenciesFromSelf().stream()
          .map(Dependency::getTargetClass)
          .filter(used -> used.getPackageName().startsWith(ROOT))
          .map(HouseTest::room)
          .forEach(of::add);
    }
    uses.keySet().removeIf(room -> room.equals("samples") || room.startsWith("bench"));
    uses.forEach((room, used) -> used.remove(room));
    return uses;
  }

  private static String room(JavaClass each) {
    return each.getPackageName().substring(ROOT.length());
  }

  /** One above the highest room that it uses; a circle has no floor. */
  private int floor(String room, Set<String> below) {
    assertThat(below.add(room)).as("a circle through " + room).isTrue();
    int highest = 0;
    for (String used : uses.getOrDefault(room, Set.of())) {
      highest = Math.max(highest, floor(used, new HashSet<>(below)));
    }
    return highest + 1;
  }

  private static String purpose(String room) throws IOException {
    for (String module : SOURCES) {
      Path file =
          Path.of(module, "src/main/java/io/github/brinewright", room.replace('.', '/'))
              .resolve("package-info.java");
      if (Files.exists(file)) {
        Matcher sentence = FIRST_SENTENCE.matcher(Files.readString(file));
        assertThat(sentence.find()).as(room + " says what it is for").isTrue();
        return sentence
            .group(1)
            .replaceAll("\\s*\\n \\* ", " ")
            .replaceAll("\\{@\\w+ ([^}]*)}", "$1");
      }
    }
    throw new AssertionError("no package-info of " + room);
  }

  @Test
  void thePictureOfTheHouseIsThatOfTheCode() throws IOException {
    TreeMap<Integer, List<String>> floors = new TreeMap<>();
    for (String room : uses.keySet()) {
      floors.computeIfAbsent(floor(room, new HashSet<>()), level -> new ArrayList<>()).add(room);
    }
    StringBuilder table =
        new StringBuilder("\n| floor | room | what is in it | stands on |\n|---|---|---|---|\n");
    for (int level : floors.descendingKeySet()) {
      for (String room : floors.get(level)) {
        table.append(
            "| %d | `%s` | %s | %s |%n".formatted(level, room, purpose(room), highest(room)));
      }
    }
    String page = Files.readString(PAGE);
    int from = page.indexOf(START) + START.length();
    int to = page.indexOf(END, from);
    String drawn = page.substring(0, from) + table.append('\n') + page.substring(to);
    if ("write".equals(System.getProperty("brinewright.pages"))) {
      Files.writeString(PAGE, drawn);
    }
    assertThat(PAGE).content().as("renew it with -Dbrinewright.pages=write").isEqualTo(drawn);
  }

  /** What it uses that nothing else it uses already stands on. */
  private String highest(String room) {
    Set<String> used = new TreeSet<>(uses.getOrDefault(room, Set.of()));
    Set<String> reached = new HashSet<>();
    used.forEach(each -> reach(each, reached));
    used.removeAll(reached);
    return String.join(", ", used);
  }

  private void reach(String room, Set<String> reached) {
    for (String used : uses.getOrDefault(room, Set.of())) {
      if (reached.add(used)) {
        reach(used, reached);
      }
    }
  }
}
