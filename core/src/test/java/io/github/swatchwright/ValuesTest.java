package io.github.swatchwright;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.swatchwright.colour.Srgb;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.match.MatchRequest;
import io.github.swatchwright.match.MatchResult;
import io.github.swatchwright.match.Matcher;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.sheet.SheetPhoto;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Results are values: two that say the same are equal, all the way down. */
class ValuesTest {
  @Test
  void matchingTwiceGivesEqualResults() {
    assertThat(match()).isEqualTo(match()).hasSameHashCodeAs(match());
  }

  private static MatchResult match() {
    ShelfOptics optics = ShelfOptics.estimate(ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE));
    return Matcher.of(optics, TristimulusWeights.D65)
        .match(MatchRequest.of(new Swatch.OfSrgb(Srgb.parse("#8A4B2A"))));
  }

  @Test
  void whateverAPublicRecordHoldsIsComparedByValue() {
    Set<String> comparedByIdentity = new TreeSet<>();
    for (String name : ExportedPackages.names()) {
      ExportedPackages.typesOf(name).stream()
          .filter(Class::isRecord)
          .flatMap(type -> Arrays.stream(type.getRecordComponents()))
          .filter(component -> !classesIn(component.getGenericType()).allMatch(ValuesTest::isValue))
          .forEach(
              component ->
                  comparedByIdentity.add(
                      component.getDeclaringRecord().getName() + "." + component.getName()));
    }
    assertThat(comparedByIdentity).isEmpty();
  }

  private static Stream<Class<?>> classesIn(Type type) {
    if (type instanceof ParameterizedType generic) {
      return Stream.concat(
          classesIn(generic.getRawType()),
          Arrays.stream(generic.getActualTypeArguments()).flatMap(ValuesTest::classesIn));
    }
    return type instanceof Class<?> plain ? Stream.of(plain) : Stream.empty();
  }

  /**
   * Records, enums, the platform's values and collections, and classes with an equals of their own;
   * of an interface, what implements it. A function has no value, and a control that holds one is
   * no result.
   */
  private static boolean isValue(Class<?> type) {
    if (type.isArray()) {
      return false;
    }
    if (type.isSealed()) {
      return Arrays.stream(type.getPermittedSubclasses()).allMatch(ValuesTest::isValue);
    }
    return type.isPrimitive()
        || type == SheetPhoto.class // A picture of many megapixels is compared by identity.
        || type.isRecord()
        || type.isEnum()
        || type.isInterface()
        || declaresEquals(type);
  }

  private static boolean declaresEquals(Class<?> type) {
    try {
      return type.getMethod("equals", Object.class).getDeclaringClass() != Object.class;
    } catch (NoSuchMethodException e) {
      throw new AssertionError(e);
    }
  }
}
