package io.github.brinewright;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import com.tngtech.archunit.library.Architectures;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lower packages never import higher ones. */
class ArchitectureTest {
  private static final String ROOT = "io.github.brinewright.";
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("io.github.brinewright");

  /** From the ground up; those on one line know nothing of each other. */
  private static final List<List<String>> FLOORS =
      List.of(
          List.of("quantity"),
          List.of("trace"),
          List.of("softener"),
          List.of("home"),
          List.of("demand"),
          List.of("hydraulics"),
          List.of("regeneration", "simulation"),
          List.of("sizing"),
          List.of("finding", "cost"),
          List.of("comparison"),
          List.of("study"),
          List.of("service"),
          List.of("sale"),
          List.of("words"),
          List.of("job"));

  @Test
  void packagesDependDownwardsOnly() {
    Architectures.LayeredArchitecture layers =
        Architectures.layeredArchitecture().consideringOnlyDependenciesInLayers();
    for (List<String> floor : FLOORS) {
      for (String name : floor) {
        layers.layer(name).definedBy(ROOT + name + "..");
      }
    }
    for (int i = 0; i < FLOORS.size(); i++) {
      String[] above =
          FLOORS.subList(i + 1, FLOORS.size()).stream()
              .flatMap(List::stream)
              .toArray(String[]::new);
      for (String name : FLOORS.get(i)) {
        if (above.length == 0) {
          layers.whereLayer(name).mayNotBeAccessedByAnyLayer();
        } else {
          layers.whereLayer(name).mayOnlyBeAccessedByLayers(above);
        }
      }
    }
    layers.check(CLASSES);
  }

  @Test
  void packagesFormNoCycles() {
    slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void theLibraryNeverPrints() {
    ArchRuleDefinition.noClasses()
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .check(CLASSES);
  }
}
