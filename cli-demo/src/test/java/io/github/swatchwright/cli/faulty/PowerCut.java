package io.github.swatchwright.cli.faulty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a disk may hold after the power was cut. Only what was forced is sure. Of the rest any part
 * may have arrived, in any order: a file's content without its name, a new name without the
 * content, or the first half of a content. POSIX promises no more than that.
 */
public final class PowerCut {
  private final String folder;
  private final Map<String, Content> names = new HashMap<>();
  private final Map<String, Content> sureNames = new HashMap<>();
  private final List<Renaming> unsure = new ArrayList<>();

  /** A file, whatever its name. */
  private static final class Content {
    private byte[] now;
    private byte[] sure;

    private Content(byte[] bytes) {
      now = bytes;
      sure = bytes;
    }

    private void write(long position, byte[] bytes) {
      int end = (int) position + bytes.length;
      byte[] grown = Arrays.copyOf(now, Math.max(now.length, end));
      System.arraycopy(bytes, 0, grown, (int) position, bytes.length);
      now = grown;
    }

    /** What may be there: nothing unsure, everything, or about half of what is new. */
    private byte[] arrived(int halves) {
      return switch (halves) {
        case 0 -> sure;
        case 1 -> Arrays.copyOf(now, (sure.length + now.length) / 2);
        default -> now;
      };
    }
  }

  /** A name that a content takes or, when there is none, that is taken away. */
  private interface Renaming {
    void apply(Map<String, Content> names);
  }

  private PowerCut(String folder, Map<String, byte[]> before) {
    this.folder = folder;
    before.forEach((name, bytes) -> names.put(folder + "/" + name, new Content(bytes)));
    sureNames.putAll(names);
  }

  /**
   * What the folder may hold when the power is cut after those changes.
   *
   * @param folder the folder's path; only its own files are looked at
   * @param before what it held, by name
   * @param changes what was done since
   */
  public static List<Map<String, byte[]>> states(
      String folder, Map<String, byte[]> before, List<DiskChange> changes) {
    PowerCut disk = new PowerCut(folder, before);
    changes.forEach(disk::change);
    List<Map<String, byte[]>> states = new ArrayList<>();
    for (int halves = 0; halves <= 2; halves++) {
      states.add(disk.state(disk.unsure, halves));
      states.add(disk.state(List.of(), halves));
      for (Renaming alone : disk.unsure) {
        states.add(disk.state(List.of(alone), halves));
      }
    }
    return states;
  }

  private void change(DiskChange change) {
    if (change instanceof DiskChange.Made made) {
      rename(made.path(), new Content(new byte[0]));
    } else if (change instanceof DiskChange.Written written) {
      content(written.path()).write(written.position(), written.bytes());
    } else if (change instanceof DiskChange.Cut cut) {
      Content content = content(cut.path());
      content.now = Arrays.copyOf(content.now, (int) cut.size());
    } else if (change instanceof DiskChange.Moved moved) {
      move(moved.from(), moved.to());
    } else if (change instanceof DiskChange.Deleted deleted) {
      names.remove(deleted.path());
      unsure.add(map -> map.remove(deleted.path()));
    } else if (change instanceof DiskChange.Forced forced) {
      force(forced.path());
    }
  }

  private Content content(String path) {
    Content content = names.get(path);
    if (content == null) {
      throw new AssertionError("there is no " + path + " in " + names.keySet());
    }
    return content;
  }

  private void rename(String path, Content content) {
    names.put(path, content);
    unsure.add(map -> map.put(path, content));
  }

  private void move(String from, String to) {
    Content content = content(from);
    names.remove(from);
    names.put(to, content);
    unsure.add(
        map -> {
          map.remove(from);
          map.put(to, content);
        });
  }

  private void force(String path) {
    String plain = path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
    if (plain.equals(folder)) {
      unsure.forEach(renaming -> renaming.apply(sureNames));
      unsure.clear();
    } else if (names.containsKey(plain)) {
      Content content = content(plain);
      content.sure = content.now;
    }
  }

  private Map<String, byte[]> state(List<Renaming> arrived, int halves) {
    Map<String, Content> there = new HashMap<>(sureNames);
    arrived.forEach(renaming -> renaming.apply(there));
    Map<String, byte[]> state = new TreeMap<>();
    there.forEach(
        (path, content) -> state.put(path.substring(folder.length() + 1), content.arrived(halves)));
    return state;
  }
}
