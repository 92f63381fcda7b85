package io.github.swatchwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Member;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The public API is the one listed in {@code core/api.txt}. After a change that is meant, {@code
 * mvn -pl core -am test -Dtest=ApiSurfaceTest -Dapi.write=true} rewrites the list, and the change
 * shows in review.
 */
class ApiSurfaceTest {
  private static final Path LISTED = Path.of("api.txt");

  /** What every record and enum has; listing it would tell nothing. */
  private static final Set<String> ALWAYS_THERE =
      Set.of("equals", "hashCode", "toString", "values", "valueOf");

  @Test
  void publicApiIsTheListedOne() throws IOException {
    List<String> lines = surface();
    if (Boolean.getBoolean("api.write")) {
      Files.writeString(LISTED, String.join("\n", lines) + "\n");
    }
    assertThat(Files.readAllLines(LISTED)).isEqualTo(lines);
  }

  private static List<String> surface() {
    List<String> lines = new ArrayList<>();
    for (String name : ExportedPackages.names()) {
      for (Class<?> type : ExportedPackages.typesOf(name)) {
        lines.add(type.toGenericString() + supertypes(type));
        lines.addAll(members(type));
      }
    }
    return lines;
  }

  /** What a type extends and implements, and for a sealed one what may implement it. */
  private static String supertypes(Class<?> type) {
    Class<?> parent = type.getSuperclass();
    boolean tellsSomething =
        parent != null && parent != Object.class && parent != Record.class && !type.isEnum();
    String above = type.isInterface() ? " extends " : " implements ";
    return (tellsSomething ? " extends " + parent.getName() : "")
        + names(above, type.getInterfaces())
        + (type.isSealed() && !type.isEnum()
            ? names(" permits ", type.getPermittedSubclasses())
            : "");
  }

  private static String names(String what, Class<?>[] types) {
    return types.length == 0
        ? ""
        : what
            + Arrays.stream(types).map(Class::getName).sorted().collect(Collectors.joining(", "));
  }

  private static List<String> members(Class<?> type) {
    List<String> members = new ArrayList<>();
    for (Field field : type.getDeclaredFields()) {
      if (isListed(field)) {
        members.add("  " + field.toGenericString());
      }
    }
    for (Executable constructor : type.getDeclaredConstructors()) {
      if (isListed(constructor)) {
        members.add("  " + constructor.toGenericString());
      }
    }
    for (Executable method : type.getDeclaredMethods()) {
      if (isListed(method) && !ALWAYS_THERE.contains(method.getName())) {
        members.add("  " + method.toGenericString());
      }
    }
    String[] sorted = members.toArray(String[]::new);
    Arrays.sort(sorted);
    return List.of(sorted);
  }

  private static boolean isListed(Member member) {
    boolean seen =
        Modifier.isPublic(member.getModifiers()) || Modifier.isProtected(member.getModifiers());
    return seen && !member.isSynthetic();
  }
}
