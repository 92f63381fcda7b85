package io.github.swatchwright.cli.file;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The endings that a {@link NewFile} may have, lower case and without the dot. Another ending is
 * refused before the command runs. Without this annotation a file may end in anything.
 */
@Target(ElementType.FIELD)
@Retention(RetentionPolicy.RUNTIME)
public @interface Endings {
  /** The endings, the first the most usual. */
  String[] value();
}
