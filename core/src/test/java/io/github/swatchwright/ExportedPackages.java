package io.github.swatchwright;

import io.github.swatchwright.colour.Lab;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.module.ModuleDescriptor;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** What the module shows to the world, read from its compiled form. */
final class ExportedPackages {
  private ExportedPackages() {}

  /** The exported packages, in alphabetical order. */
  static List<String> names() {
    try (InputStream descriptor = Files.newInputStream(classes().resolve("module-info.class"))) {
      return ModuleDescriptor.read(descriptor).exports().stream()
          .map(ModuleDescriptor.Exports::source)
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The public types of a package, nested ones beside their owners, by name. */
  static List<Class<?>> typesOf(String name) {
    Path folder = classes().resolve(name.replace('.', '/'));
    List<Class<?>> types = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        String simple = file.getFileName().toString();
        if (simple.endsWith(".class") && !simple.equals("package-info.class")) {
          Class<?> type =
              Class.forName(
                  name + "." + simple.substring(0, simple.length() - ".class".length()),
                  false,
                  Lab.class.getClassLoader());
          if (isVisible(type)) {
            types.add(type);
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
    types.sort(Comparator.comparing(Class::getName));
    return types;
  }

  private static boolean isVisible(Class<?> type) {
    boolean here = Modifier.isPublic(type.getModifiers()) && !type.isAnonymousClass();
    Class<?> owner = type.getDeclaringClass();
    return here && (owner == null || isVisible(owner));
  }

  private static Path classes() {
    try {
      return Path.of(Lab.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new AssertionError(e);
    }
  }
}
