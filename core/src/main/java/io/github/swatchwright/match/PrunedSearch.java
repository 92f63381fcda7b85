package io.github.swatchwright.match;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.paint.Medium;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds what {@link ExhaustiveSearch} finds, in the same order, but leaves out what provably can't
 * be near; see {@link CompiledShelf}. It remembers the last few spaces that it searched, so that
 * another target of the same space is found much faster. Thread-safe.
 */
public final class PrunedSearch implements RecipeSearch {
  /** A shelf is searched medium by medium. */
  private static final int REMEMBERED = Medium.values().length;

  private final Map<SearchSpace, CompiledShelf> shelves = new LinkedHashMap<>(4, 0.75f, true);

  /** A search that remembers nothing yet. */
  public PrunedSearch() {}

  @Override
  public List<Candidate> nearest(SearchSpace space, Lab target, int count) {
    return compiled(space).nearest(target, count);
  }

  @Override
  public SearchOutcome search(SearchSpace space, Lab target, int count, SearchControl control) {
    return compiled(space).search(target, count, control);
  }

  /** The space made ready; the same object as before while it is remembered. */
  public CompiledShelf compiled(SearchSpace space) {
    synchronized (shelves) {
      CompiledShelf shelf = shelves.computeIfAbsent(space, CompiledShelf::of);
      if (shelves.size() > REMEMBERED) {
        shelves.remove(shelves.keySet().iterator().next());
      }
      return shelf;
    }
  }
}
