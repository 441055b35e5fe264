package fingering.cli;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.Random;

/** Damages the bytes of a file, like bad disks, broken transfers and text editors. */
final class DamagedBytes {
  private static final int MAX_CHANGES = 4;

  private DamagedBytes() {}

  /**
   * The bytes with one to four changes.
   *
   * @param other another file, to take pieces from
   */
  static byte[] damage(byte[] whole, byte[] other, Random random) {
    byte[] bytes = whole;
    int changes = 1 + random.nextInt(MAX_CHANGES);
    for (int i = 0; i < changes && bytes.length > 0; i++) {
      bytes = once(bytes, other, random);
    }
    return bytes;
  }

  private static byte[] once(byte[] bytes, byte[] other, Random random) {
    int from = random.nextInt(bytes.length);
    int to = Math.min(bytes.length, from + 1 + random.nextInt(1 << random.nextInt(12)));
    return switch (random.nextInt(7)) {
      case 0 -> flipped(bytes, from, random);
      case 1 -> Arrays.copyOf(bytes, from);
      case 2 -> joined(bytes, from, new byte[0], to);
      case 3 -> joined(bytes, to, Arrays.copyOfRange(bytes, from, to), to);
      case 4 -> joined(bytes, from, piece(other, random), to);
      case 5 -> joined(bytes, from, noise(random), from);
      default -> digits(bytes, from, random);
    };
  }

  private static byte[] flipped(byte[] bytes, int at, Random random) {
    byte[] changed = bytes.clone();
    changed[at] ^= (byte) (1 << random.nextInt(8));
    return changed;
  }

  /** The first bytes, other bytes, and the last bytes. */
  private static byte[] joined(byte[] bytes, int head, byte[] middle, int tail) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, head);
    out.writeBytes(middle);
    out.write(bytes, tail, bytes.length - tail);
    return out.toByteArray();
  }

  private static byte[] piece(byte[] other, Random random) {
    int from = random.nextInt(other.length);
    return Arrays.copyOfRange(other, from, Math.min(other.length, from + random.nextInt(400)));
  }

  private static byte[] noise(Random random) {
    byte[] noise = new byte[1 + random.nextInt(8)];
    random.nextBytes(noise);
    return noise;
  }

  /** Replaces the next few digits. */
  private static byte[] digits(byte[] bytes, int from, Random random) {
    byte[] changed = bytes.clone();
    int left = 1 + random.nextInt(3);
    for (int i = from; i < changed.length && left > 0; i++) {
      if (changed[i] >= '0' && changed[i] <= '9') {
        changed[i] = (byte) "0123456789-.".charAt(random.nextInt(12));
        left--;
      }
    }
    return changed;
  }
}
