package io.github.brinewright.samples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.proposal.DocumentTexts;
import io.github.brinewright.words.Texts;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Programs of people who use the library, built outside its own build from the artifacts that it
 * installs: on the class path, on the module path and with a class loader of their own, under each
 * JDK that is there. Everywhere they say and write the same.
 */
class ConsumersIT {
  private static final Path ROOT = Path.of("").toAbsolutePath().getParent();
  private static final Path TARGET = ROOT.resolve("samples/target/consumers");
  private static final Path SOURCES = ROOT.resolve("samples/consumers");
  private static final Path PROJECT = TARGET.resolve("project");

  /** Where the consumers' build keeps what it took; ours is taken anew each time. */
  private static final Path OWN = TARGET.resolve("m2");

  private static final int OLDEST = 17;

  private static final String GERMAN = "german.pdf";

  /** What each way said and wrote under each JDK. */
  private static final Map<String, Map<String, Object>> RESULTS = new LinkedHashMap<>();

  @BeforeAll
  static void buildAndRun() throws Exception {
    build();
    for (Map.Entry<String, Path> home : homes().entrySet()) {
      for (Map.Entry<String, List<String>> way : ways().entrySet()) {
        String name = home.getKey() + "-" + way.getKey();
        RESULTS.put(name, result(home.getValue(), way.getValue(), TARGET.resolve(name)));
      }
    }
  }

  private static void build() throws Exception {
    clear(OWN.resolve("io/github/brinewright"));
    clear(PROJECT);
    copy(SOURCES, PROJECT);
    Path settings = TARGET.resolve("settings.xml");
    Files.writeString(settings, settings());
    run(
        List.of(
            Path.of(System.getProperty("maven.home"), "bin", "mvn").toString(),
            "-B",
            "-q",
            "-ntp",
            "-s",
            settings.toString(),
            "-Dmaven.repo.local=" + OWN,
            "-Dmaven.test.skip",
            "-f",
            PROJECT.resolve("pom.xml").toString(),
            "package"));
  }

  private static void clear(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> files = Files.walk(folder).sorted(Comparator.reverseOrder())) {
        for (Path file : files.toList()) {
          Files.delete(file);
        }
      }
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path copy = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
        }
      }
    }
  }

  /** Our artifacts from target/repository, all others from where this build has them. */
  private static String settings() {
    return """
        <settings>
          <mirrors>
            <mirror><id>others</id><mirrorOf>*,!ours</mirrorOf><url>%s</url></mirror>
          </mirrors>
          <profiles>
            <profile>
              <id>ours</id>
              <repositories>
                <repository><id>ours</id><url>%s</url></repository>
              </repositories>
            </profile>
          </profiles>
          <activeProfiles><activeProfile>ours</activeProfile></activeProfiles>
        </settings>
        """
        .formatted(
            Path.of(System.getProperty("maven.repository")).toUri(),
            ROOT.resolve("target/repository").toUri());
  }

  private static String run(List<String> command) throws Exception {
    Path log = Files.createTempFile(TARGET, "run", ".log");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    if (!process.waitFor(5, TimeUnit.MINUTES)) {
      process.destroyForcibly();
    }
    String said = Files.readString(log);
    assertThat(process.waitFor()).as(String.join(" ", command) + "\n" + said).isZero();
    Files.delete(log);
    return said;
  }

  /** Homes of Java by version, each version once. */
  private static Map<String, Path> homes() throws IOException {
    Map<String, Path> homes = new TreeMap<>();
    homes.put(System.getProperty("java.version"), Path.of(System.getProperty("java.home")));
    Path usual = Path.of("/usr/lib/jvm");
    if (Files.isDirectory(usual)) {
      try (Stream<Path> found = Files.list(usual)) {
        for (Path home : found.filter(h -> Files.isExecutable(h.resolve("bin/java"))).toList()) {
          Properties release = new Properties();
          try (var in = Files.newInputStream(home.resolve("release"))) {
            release.load(in);
          }
          String version = release.getProperty("JAVA_VERSION").replace("\"", "");
          if (Runtime.Version.parse(version).feature() >= OLDEST) {
            homes.putIfAbsent(version, home);
          }
        }
      }
    }
    return homes;
  }

  /** Ways to start the programs, by name. */
  private static Map<String, List<String>> ways() throws IOException {
    Path jar = PROJECT.resolve("class-path/target/consumers.jar");
    List<Path> libraries = libraries(jar);
    List<String> modules = new ArrayList<>();
    modules.add(PROJECT.resolve("module-path/target/consumers.jar").toString());
    libraries.forEach(library -> modules.add(library.toString()));
    List<String> loaded = new ArrayList<>(modules);
    loaded.set(0, jar.toString());
    Map<String, List<String>> ways = new LinkedHashMap<>();
    ways.put("class-path", List.of("-jar", jar.toString()));
    ways.put(
        "module-path",
        List.of(
            "-p",
            String.join(File.pathSeparator, modules),
            "--add-modules",
            "com.h2database",
            "-m",
            "org.example.consumers/consumers.Consumers"));
    ways.put(
        "own-loader",
        List.of(
            "-Dconsumers.path=" + String.join(File.pathSeparator, loaded),
            "-cp",
            PROJECT.resolve("class-path/target/classes").toString(),
            "consumers.Launcher"));
    return ways;
  }

  private static List<Path> libraries(Path jar) throws IOException {
    try (JarFile file = new JarFile(jar.toFile())) {
      String path = file.getManifest().getMainAttributes().getValue(Attributes.Name.CLASS_PATH);
      return Stream.of(path.split(" ")).map(URI::create).map(Path::of).toList();
    }
  }

  /** What a run said, and each file that it wrote. */
  private static Map<String, Object> result(Path java, List<String> way, Path out)
      throws Exception {
    clear(out);
    List<String> command = new ArrayList<>(List.of(java.resolve("bin/java").toString()));
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true"));
    command.addAll(way);
    command.add(out.toString());
    Map<String, Object> result = new TreeMap<>();
    result.put("said", run(command));
    try (Stream<Path> files = Files.list(out)) {
      for (Path file : files.toList()) {
        result.put(file.getFileName().toString(), Arrays.hashCode(Files.readAllBytes(file)));
      }
    }
    return result;
  }

  @Test
  void everyWayUnderEveryJdkSaysAndWritesTheSame() {
    Map<String, Object> first = RESULTS.values().iterator().next();
    assertThat(first)
        .containsKeys("comparison.json", "served.pdf", "from-database-fr-CA.pdf", "revised.pdf")
        .containsKeys(GERMAN, "own-rule.pdf", "own-sections.pdf", "proposal-A1.pdf");
    assertThat(RESULTS.entrySet())
        .allSatisfy(result -> assertThat(result.getValue()).as(result.getKey()).isEqualTo(first));
  }

  /** English texts that the German consumer has changed, of those that need no figure. */
  private static List<String> changedTexts() {
    return Stream.of(DocumentTexts.ours(), Texts.library())
        .flatMap(texts -> texts.in(Locale.US).values().stream())
        .filter(text -> text.length() > 11 && text.contains("e") && !text.contains("{"))
        .toList();
  }

  @Test
  void aDocumentInALanguageOfOnesOwnHasNoTextOfOurs() throws IOException {
    Path pdf = TARGET.resolve(RESULTS.keySet().iterator().next()).resolve(GERMAN);
    String text;
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("de-DE");
    }
    assertThat(text).contains("Wir empfehlen", "Seite 1 von", "Tage", "Your watër and your homë");
    assertThat(changedTexts())
        .hasSizeGreaterThan(250)
        .allSatisfy(ours -> assertThat(text).doesNotContain(ours));
  }
}
