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
import io.github.brinewright.internal.document.Tag;
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
        .layer("model")
        .definedBy(ROOT + "model..")
        .layer("document")
        .definedBy(ROOT + "internal.document..")
        .layer("chart")
        .definedBy(ROOT + "internal.chart..")
        .layer("layout")
        .definedBy(ROOT + "internal.layout..")
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
        .whereLayer("layout")
        .mayOnlyBeAccessedByLayers("proposal")
        .whereLayer("chart")
        .mayOnlyBeAccessedByLayers("layout")
        .whereLayer("document")
        .mayOnlyBeAccessedByLayers("chart", "layout", "proposal")
        .whereLayer("model")
        .mayOnlyBeAccessedByLayers("section", "layout", "proposal")
        .check(CLASSES);
  }

  @Test
  void packagesFormNoCycles() {
    SlicesRuleDefinition.slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  /** A section says what is there; it neither tags nor measures nor draws. */
  @Test
  void sectionsAndModelsDrawNothing() {
    noClasses()
        .that()
        .resideInAnyPackage(ROOT + "internal.section..", ROOT + "model..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            ROOT + "internal.layout..", ROOT + "internal.chart..", ROOT + "internal.document..")
        .check(CLASSES);
  }

  /** Tags are opened where pieces are put on pages. */
  @Test
  void tagsAreOpenedInOnePlace() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + "internal.document..")
        .and()
        .doNotHaveFullyQualifiedName(ROOT + "internal.layout.Tags")
        .should()
        .callConstructor(Tag.class, Tag.Role.class)
        .check(CLASSES);
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
