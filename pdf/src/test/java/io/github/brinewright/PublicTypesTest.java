package io.github.brinewright;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.words.Wording;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What the modules export names no type of a library that an embedder may have in another version:
 * money and nullness alone are part of it.
 */
class PublicTypesTest {
  private static final Set<String> WELCOME = Set.of("org.joda.money", "org.jspecify.annotations");

  private static Path place(Class<?> type) throws Exception {
    return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
  }

  private static Set<String> exported(Path... modules) {
    return ModuleFinder.of(modules).findAll().stream()
        .map(module -> module.descriptor())
        .flatMap(descriptor -> descriptor.exports().stream())
        .filter(exports -> !exports.isQualified())
        .map(ModuleDescriptor.Exports::source)
        .collect(Collectors.toSet());
  }

  private static boolean open(JavaClass type) {
    return type.getModifiers().contains(JavaModifier.PUBLIC)
        && type.getEnclosingClass().map(PublicTypesTest::open).orElse(true);
  }

  private static boolean open(JavaMember member) {
    return member.getModifiers().contains(JavaModifier.PUBLIC)
        || member.getModifiers().contains(JavaModifier.PROTECTED);
  }

  private static Stream<JavaClass> named(JavaClass type) {
    Stream<JavaClass> kin =
        Stream.concat(type.getRawSuperclass().stream(), type.getRawInterfaces().stream());
    Stream<JavaClass> fields =
        type.getFields().stream()
            .filter(PublicTypesTest::open)
            .map(JavaField::getType)
            .flatMap(field -> field.getAllInvolvedRawTypes().stream());
    return Stream.of(kin, fields, type.getCodeUnits().stream().flatMap(PublicTypesTest::named))
        .flatMap(types -> types);
  }

  private static Stream<JavaClass> named(JavaCodeUnit unit) {
    if (!open(unit)) {
      return Stream.empty();
    }
    Stream<JavaClass> arguments =
        unit.getParameterTypes().stream().flatMap(type -> type.getAllInvolvedRawTypes().stream());
    return Stream.concat(arguments, unit.getReturnType().getAllInvolvedRawTypes().stream());
  }

  @Test
  void exportedTypesNameOnlyOursJavasAndMoney() throws Exception {
    Path core = place(Wording.class);
    Path pdf = place(Proposal.class);
    Set<String> exported = exported(core, pdf);
    JavaClasses classes = new ClassFileImporter().importPaths(core, pdf);
    Set<String> strange = new TreeSet<>();
    for (JavaClass type : classes) {
      if (exported.contains(type.getPackageName()) && open(type)) {
        named(type)
            .map(JavaClass::getBaseComponentType)
            .filter(other -> !other.isPrimitive())
            .map(JavaClass::getPackageName)
            .filter(name -> !name.startsWith("java.") && !WELCOME.contains(name))
            .filter(name -> !exported.contains(name))
            .forEach(name -> strange.add(type.getName() + " names a type of " + name));
      }
    }
    assertThat(exported).contains("io.github.brinewright.words", "io.github.brinewright.proposal");
    assertThat(strange).isEmpty();
  }
}
