package io.github.brinewright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noCodeUnits;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.Architectures;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The proposal builder stands on floors too. */
class ArchitectureTest {
  private static final String ROOT = "io.github.brinewright.";
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("io.github.brinewright");

  @Test
  void packagesDependDownwardsOnly() {
    Architectures.layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .layer("document")
        .definedBy(ROOT + "internal.document..")
        .layer("layout")
        .definedBy(ROOT + "internal.layout..")
        .layer("chart")
        .definedBy(ROOT + "internal.chart..")
        .layer("section")
        .definedBy(ROOT + "internal.section..")
        .layer("exchange")
        .definedBy(ROOT + "exchange..")
        .layer("proposal")
        .definedBy(ROOT + "proposal..")
        .whereLayer("proposal")
        .mayNotBeAccessedByAnyLayer()
        .whereLayer("exchange")
        .mayOnlyBeAccessedByLayers("proposal")
        .whereLayer("section")
        .mayOnlyBeAccessedByLayers("proposal")
        .whereLayer("chart")
        .mayOnlyBeAccessedByLayers("section")
        .whereLayer("layout")
        .mayOnlyBeAccessedByLayers("chart", "section", "proposal")
        .check(CLASSES);
  }

  @Test
  void packagesFormNoCycles() {
    SlicesRuleDefinition.slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void onlyTheDocumentPackageTouchesPdfBox() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + "internal.document..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..", "org.apache.xmpbox..")
        .check(CLASSES);
  }

  @Test
  void whatMayBeMissingIsNeverAskedForAsAnOptional() {
    noCodeUnits()
        .that()
        .areDeclaredInClassesThat()
        .resideInAnyPackage(ROOT + "proposal..", ROOT + "exchange..")
        .and()
        .areNotPrivate()
        .should()
        .haveRawParameterTypes(
            DescribedPredicate.<List<JavaClass>>describe(
                "an Optional",
                types -> types.stream().anyMatch(type -> type.isEquivalentTo(Optional.class))))
        .check(CLASSES);
  }
}
