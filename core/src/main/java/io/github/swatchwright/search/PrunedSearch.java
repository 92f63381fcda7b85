package io.github.swatchwright.search;

import io.github.swatchwright.argument.Require;
import io.github.swatchwright.mix.Control;
import io.github.swatchwright.paint.Medium;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Finds what {@link ExhaustiveSearch} finds, in the same order, but leaves out what provably can't
 * be near; see {@link CompiledShelf}. It remembers the last few spaces that it searched, so that
 * another target of the same space is found much faster. Thread-safe.
 */
public final class PrunedSearch implements RecipeSearch {
  /** A shelf is searched medium by medium, and a match may ask for several kinds of recipes. */
  private static final int REMEMBERED = 4 * Medium.values().length;

  /** The most bytes that spaces searched before may hold when another is added, unless stated. */
  public static final long USUAL_BYTES = 48L << 20;

  private final long mostBytes;

  private final Map<SearchSpace, CompiledShelf> shelves = new LinkedHashMap<>(4, 0.75f, true);

  /** A search that remembers nothing yet. */
  public PrunedSearch() {
    this(USUAL_BYTES);
  }

  /**
   * The same with another limit.
   *
   * @param mostBytes the most that spaces searched before may hold when another is added, at least
   *     0
   */
  public PrunedSearch(long mostBytes) {
    Require.nonNegative("mostBytes", (double) mostBytes);
    this.mostBytes = mostBytes;
  }

  @Override
  public SearchOutcome search(SearchSpace space, Sought sought, Control control) {
    return compiled(space).search(sought, control);
  }

  /** The space made ready; the same object as before while it is remembered. */
  public CompiledShelf compiled(SearchSpace space) {
    synchronized (shelves) {
      CompiledShelf known = shelves.get(space);
      if (known != null) {
        return known;
      }
      Iterator<CompiledShelf> eldest = shelves.values().iterator();
      while (eldest.hasNext() && (shelves.size() >= REMEMBERED || bytes() > mostBytes)) {
        eldest.next();
        eldest.remove();
      }
      CompiledShelf shelf = CompiledShelf.of(space);
      shelves.put(space, shelf);
      return shelf;
    }
  }

  private long bytes() {
    return shelves.values().stream().mapToLong(CompiledShelf::bytes).sum();
  }
}
