package io.github.swatchwright;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.testdata.DemoShelf;
import java.io.IOException;
import java.io.StringWriter;
import java.lang.reflect.Method;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every exported package explains itself by an example, which compiles and runs. */
class PackageExamplesTest {
  private static final Path SOURCES = Path.of("src/main/java");
  private static final Pattern EXAMPLE =
      Pattern.compile("<pre>\\{@code\\n(.*?)\\n \\* }</pre>", Pattern.DOTALL);

  @TestFactory
  Stream<DynamicTest> packageHasAnExampleThatRuns(@TempDir Path folder) throws IOException {
    List<String> packages = ExportedPackages.names();
    assertThat(packages).hasSizeGreaterThan(10);
    return packages.stream()
        .map(name -> DynamicTest.dynamicTest(name, () -> run(name, packages, folder)));
  }

  private static void run(String name, List<String> packages, Path folder) throws Exception {
    String page = Files.readString(SOURCES.resolve(name.replace('.', '/') + "/package-info.java"));
    Matcher example = EXAMPLE.matcher(page);
    assertThat(example.find()).as("%s has an example", name).isTrue();
    String code =
        example
            .group(1)
            .lines()
            .map(line -> line.replaceFirst("^ \\* ?", ""))
            .collect(Collectors.joining("\n"));
    String simpleName = "Example_" + name.replace('.', '_');
    compile(simpleName, source(simpleName, name, packages, code), folder);
    try (URLClassLoader loader =
        new URLClassLoader(
            new URL[] {folder.toUri().toURL()}, PackageExamplesTest.class.getClassLoader())) {
      Method main = loader.loadClass(simpleName).getDeclaredMethod("run", Shelf.class);
      main.invoke(null, ShelfJson.parse(DemoShelf.text(), "demo shelf"));
    }
  }

  /** The package's own names come first, where two packages have the same. */
  private static String source(
      String simpleName, String own, List<String> packages, String statements) {
    String imports =
        packages.stream()
            .map(name -> "import " + name + ".*;\n")
            .collect(
                Collectors.joining("", "import java.nio.charset.*;\nimport java.util.*;\n", ""));
    String ownTypes =
        ExportedPackages.typesOf(own).stream()
            .filter(type -> type.getDeclaringClass() == null)
            .map(type -> "import " + type.getCanonicalName() + ";\n")
            .collect(Collectors.joining());
    return imports
        + ownTypes
        + "public class %s {\n  public static void run(Shelf shelf) throws Exception {\n%s\n  }\n}\n"
            .formatted(simpleName, statements);
  }

  private static void compile(String simpleName, String source, Path folder) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    JavaFileObject file =
        new SimpleJavaFileObject(
            URI.create("string:///" + simpleName + ".java"), JavaFileObject.Kind.SOURCE) {
          @Override
          public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return source;
          }
        };
    StringWriter said = new StringWriter();
    List<String> options =
        List.of(
            "-d", folder.toString(), "-cp", System.getProperty("java.class.path"), "-proc:none");
    boolean compiled = compiler.getTask(said, null, null, options, null, List.of(file)).call();
    assertThat(compiled).as("%s%n%s", source, said).isTrue();
  }
}
