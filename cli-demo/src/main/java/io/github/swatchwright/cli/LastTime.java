package io.github.swatchwright.cli;

import io.github.swatchwright.cli.file.GivenFile;
import io.github.swatchwright.json.Notebook;
import io.github.swatchwright.json.Trials;
import io.github.swatchwright.mix.Mix;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * What a notebook remembers of the same paint and step.
 *
 * @param trials those of the notebook
 */
record LastTime(Trials trials) {
  /** From the notebook that was named with {@code --notebook}; nothing when there is none yet. */
  static LastTime of(SharedOptions shared) {
    Notebook.Contents nothing = new Notebook.Contents(List.of(), List.of());
    return new LastTime(
        Trials.of(
            shared.notebookFile == null
                ? nothing
                : new GivenFile(shared.notebookFile.path())
                    .readIfThere("--notebook", path -> Notebook.at(path).read())
                    .orElse(nothing)));
  }

  /** How it went, in a line. */
  Optional<String> of(Mix mix, Collection<String> step) {
    List<String> paints = mix.parts().stream().map(part -> part.paint().name()).toList();
    return trials
        .last(paints, step)
        .map(one -> "Last time (entry " + one.number() + "): " + one.trial().inWords());
  }
}
