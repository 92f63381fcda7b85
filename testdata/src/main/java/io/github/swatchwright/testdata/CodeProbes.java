package io.github.swatchwright.testdata;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javax.management.InstanceNotFoundException;
import javax.management.JMException;
import javax.management.MBeanServer;
import javax.management.ObjectName;

/**
 * Which places of the code were reached, as JaCoCo's agent tells it (option {@code jmx=true}): a
 * bit for each of its probes. The layout of its answer is that of its version 0.8: blocks of a
 * class's id, its name and its probes, eight to a byte.
 */
final class CodeProbes {
  private static final byte HEADER = 0x01;
  private static final byte SESSION = 0x10;
  private static final byte CLASS = 0x11;

  private final MBeanServer server = ManagementFactory.getPlatformMBeanServer();
  private final ObjectName agent;

  /** Where the probes of each class begin. */
  private final Map<Long, Integer> starts = new HashMap<>();

  private int next;

  private CodeProbes(ObjectName agent) {
    this.agent = agent;
  }

  /** The agent of this process, when there is one. */
  static Optional<CodeProbes> ofProcess() {
    try {
      ObjectName name = new ObjectName("org.jacoco:type=Runtime");
      CodeProbes probes = new CodeProbes(name);
      probes.server.getObjectInstance(name);
      return Optional.of(probes);
    } catch (InstanceNotFoundException e) {
      return Optional.empty();
    } catch (JMException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What was reached since the last call, in the agent's own form. */
  byte[] execution() {
    try {
      return (byte[])
          server.invoke(agent, "getExecutionData", new Object[] {true}, new String[] {"boolean"});
    } catch (JMException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What was reached since the last call. */
  BitSet reached() {
    BitSet reached = new BitSet();
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(execution()))) {
      while (in.available() > 0) {
        block(in, reached);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return reached;
  }

  private void block(DataInputStream in, BitSet reached) throws IOException {
    byte kind = in.readByte();
    switch (kind) {
      case HEADER -> in.skipNBytes(2 * Short.BYTES);
      case SESSION -> {
        in.readUTF();
        in.skipNBytes(2 * Long.BYTES);
      }
      case CLASS -> {
        long id = in.readLong();
        in.readUTF();
        probes(id, in, reached);
      }
      default -> throw new IOException("an unknown block " + kind);
    }
  }

  private void probes(long id, DataInputStream in, BitSet reached) throws IOException {
    int count = variable(in);
    Integer known = starts.get(id);
    int start = known == null ? next : known;
    if (known == null) {
      starts.put(id, start);
      next += count;
    }
    for (int i = 0; i < count; i += Byte.SIZE) {
      int bits = in.readUnsignedByte();
      for (int bit = 0; bit < Byte.SIZE && i + bit < count; bit++) {
        if (((bits >> bit) & 1) == 1) {
          reached.set(start + i + bit);
        }
      }
    }
  }

  /** Seven bits a byte, the lowest first. */
  private static int variable(DataInputStream in) throws IOException {
    int value = 0;
    for (int shift = 0; ; shift += 7) {
      int bits = in.readUnsignedByte();
      value |= (bits & 0x7F) << shift;
      if (bits < 0x80) {
        return value;
      }
    }
  }
}
