package fingering.cli;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.Random;

/** Spoils the bytes of a file, as bad disks, broken transfers and curious people do. */
final class SpoiltBytes {
  private static final int MOST_CHANGES = 4;

  private SpoiltBytes() {}

  /**
   * The bytes with one to four things wrong.
   *
   * @param other another file, from which pieces come
   */
  static byte[] spoil(byte[] whole, byte[] other, Random random) {
    byte[] bytes = whole;
    int changes = 1 + random.nextInt(MOST_CHANGES);
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

  /** The bytes up to a place, others, and those from another place on. */
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

  /** Other digits in the next few places that have some. */
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
