package io.github.swatchwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The arrows of the design: what a package may build on. */
class ArchitectureTest {
  private static final String ROOT = "io.github.swatchwright";
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .withImportOption(location -> !location.contains("testdata"))
          .importPackages(ROOT);

  @Test
  void dataFlowsOneWay() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .withOptionalLayers(true)
        .layer("exchange")
        .definedBy(ROOT + ".json..", ROOT + ".exchange..", ROOT + ".card..")
        .layer("asking")
        .definedBy(
            ROOT + ".match..",
            ROOT + ".ladder..",
            ROOT + ".coat..",
            ROOT + ".calibrate..",
            ROOT + ".photo..")
        .layer("mix")
        .definedBy(ROOT + ".mix..")
        .layer("paint")
        .definedBy(ROOT + ".paint..")
        .layer("optics")
        .definedBy(ROOT + ".optics..")
        .layer("spectrum")
        .definedBy(ROOT + ".spectrum..")
        .layer("difference")
        .definedBy(ROOT + ".difference..")
        .layer("colour")
        .definedBy(ROOT + ".colour..")
        .layer("argument")
        .definedBy(ROOT + ".argument..")
        .whereLayer("exchange")
        .mayNotBeAccessedByAnyLayer()
        .whereLayer("asking")
        .mayOnlyBeAccessedByLayers("exchange")
        .whereLayer("mix")
        .mayOnlyBeAccessedByLayers("asking", "exchange")
        .whereLayer("paint")
        .mayOnlyBeAccessedByLayers("mix", "asking", "exchange")
        .whereLayer("optics")
        .mayOnlyBeAccessedByLayers("paint", "mix", "asking", "exchange")
        .whereLayer("spectrum")
        .mayOnlyBeAccessedByLayers("optics", "paint", "mix", "asking", "exchange")
        .whereLayer("difference")
        .mayOnlyBeAccessedByLayers("spectrum", "optics", "paint", "mix", "asking", "exchange")
        .whereLayer("colour")
        .mayOnlyBeAccessedByLayers(
            "difference", "spectrum", "optics", "paint", "mix", "asking", "exchange")
        .check(CLASSES);
  }

  @Test
  void packagesFormNoCycle() {
    slices().matching(ROOT + ".(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void jacksonIsKnownToJsonAlone() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + ".json..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("com.fasterxml.jackson..")
        .check(CLASSES);
  }

  @Test
  void coreNeedsNoDesktop() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.awt..", "javax.swing..", "javax.imageio..", "java.beans..")
        .check(CLASSES);
  }
}
