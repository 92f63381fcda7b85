package io.github.swatchwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What a package may build on: the arrows of the picture in DEVELOPERS.md, and nothing else. */
class ArchitectureTest {
  private static final String ROOT = "io.github.swatchwright";
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .withImportOption(location -> !location.contains("testdata"))
          .importPackages(ROOT);

  /** A line of the picture in DEVELOPERS.md: "upper --> lower". */
  private static final Pattern ARROW = Pattern.compile("(?m)^ +(\\w+) --> (\\w+)$");

  /** Every package may check its arguments; the picture would be full of these arrows. */
  private static final String USED_BY_ALL = "argument";

  @Test
  void everyUseOfAnotherPackageFollowsTheArrowsDrawn() throws IOException {
    Map<String, Set<String>> drawn = drawn();
    uses()
        .forEach(
            (from, used) ->
                assertThat(below(from, drawn))
                    .as("packages below %s in the picture of DEVELOPERS.md", from)
                    .containsAll(used));
  }

  @Test
  void everyArrowDrawnIsAUseAndNoneFollowsFromOthers() throws IOException {
    Map<String, Set<String>> drawn = drawn();
    Map<String, Set<String>> uses = uses();
    assertThat(drawn.keySet()).isSubsetOf(uses.keySet());
    drawn.forEach(
        (from, arrows) -> {
          assertThat(uses.get(from)).as("packages that %s uses", from).containsAll(arrows);
          for (String arrow : arrows) {
            Set<String> others = new HashSet<>(arrows);
            others.remove(arrow);
            others.forEach(
                other ->
                    assertThat(below(other, drawn))
                        .as("%s --> %s follows from %s --> %s", from, arrow, from, other)
                        .doesNotContain(arrow));
          }
        });
  }

  @Test
  void everyPackageIsInThePicture() throws IOException {
    Set<String> inPicture = new HashSet<>();
    drawn()
        .forEach(
            (from, arrows) -> {
              inPicture.add(from);
              inPicture.addAll(arrows);
            });
    Set<String> packages = new HashSet<>(uses().keySet());
    packages.remove(USED_BY_ALL);
    assertThat(inPicture).isEqualTo(packages);
  }

  @Test
  void theSearchIsKnownToMatchAlone() {
    noClasses()
        .that()
        .resideOutsideOfPackages(ROOT + ".match..", ROOT + ".search..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(ROOT + ".search..")
        .check(CLASSES);
  }

  private static Map<String, Set<String>> drawn() throws IOException {
    Map<String, Set<String>> arrows = new TreeMap<>();
    Matcher arrow = ARROW.matcher(Files.readString(Path.of("../DEVELOPERS.md")));
    while (arrow.find()) {
      arrows.computeIfAbsent(arrow.group(1), from -> new TreeSet<>()).add(arrow.group(2));
    }
    return arrows;
  }

  /** The packages that one may use: all that lie below it. */
  private static Set<String> below(String from, Map<String, Set<String>> arrows) {
    Set<String> reached = new HashSet<>();
    for (String next : arrows.getOrDefault(from, Set.of())) {
      reached.add(next);
      reached.addAll(below(next, arrows));
    }
    return reached;
  }

  private static Map<String, Set<String>> uses() {
    Map<String, Set<String>> uses = new TreeMap<>();
    for (JavaClass owner : CLASSES) {
      Set<String> used = uses.computeIfAbsent(room(owner), room -> new TreeSet<>());
      owner.getDirectDependenciesFromSelf().stream()
          .map(dependency -> dependency.getTargetClass().getBaseComponentType())
          .filter(target -> target.getPackageName().startsWith(ROOT + "."))
          .map(ArchitectureTest::room)
          .filter(room -> !room.equals(room(owner)) && !room.equals(USED_BY_ALL))
          .forEach(used::add);
    }
    return uses;
  }

  private static String room(JavaClass owner) {
    return owner.getPackageName().substring(ROOT.length() + 1);
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

  /** Newer versions of Java compute these in another way, with another last bit. */
  @Test
  void rootsAndHyperbolicFunctionsAreTheSameInEveryJava() {
    for (String name : List.of("cbrt", "sinh", "cosh", "tanh")) {
      noClasses().should().callMethod(Math.class, name, double.class).check(CLASSES);
    }
  }
}
