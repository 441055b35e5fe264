package fingering.web;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Texts that nobody can guess, and signatures that nobody else can make. Of one run. */
final class Secrets {
  private static final int BYTES = 18;
  private static final int KEY_BYTES = 32;
  private static final String METHOD = "HmacSHA256";
  private static final Base64.Encoder TEXT = Base64.getUrlEncoder().withoutPadding();

  private final SecureRandom random = new SecureRandom();
  private final byte[] key = bytes(KEY_BYTES);

  private byte[] bytes(int number) {
    byte[] bytes = new byte[number];
    random.nextBytes(bytes);
    return bytes;
  }

  /** A new text of 24 letters, digits, hyphens and underscores. */
  String fresh() {
    return TEXT.encodeToString(bytes(BYTES));
  }

  /** The signature of a text, as long as {@link #fresh} and of the same letters. */
  String sign(String purpose, String text) {
    try {
      Mac mac = Mac.getInstance(METHOD);
      mac.init(new SecretKeySpec(key, METHOD));
      mac.update(purpose.getBytes(StandardCharsets.UTF_8));
      mac.update((byte) 0);
      byte[] full = mac.doFinal(text.getBytes(StandardCharsets.UTF_8));
      return TEXT.encodeToString(Arrays.copyOf(full, BYTES));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java has " + METHOD, e);
    }
  }

  /** Whether two texts are the same; the time that it takes does not say where they differ. */
  static boolean same(String one, String other) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
  }
}
