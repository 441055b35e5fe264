package fingering.playability;

import java.util.Locale;

/** How much a finding weighs, the gravest first. */
public enum Severity {
  /** No player and no bow can do it as it is written. */
  UNPLAYABLE,
  /** It can go wrong with players of the level. */
  RISKY,
  /** It can be played; the arranger may want to know, or to say more in the part. */
  WORTH_KNOWING;

  /** The name in data: {@code worth-knowing}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** As in a sentence: {@code worth knowing}. */
  public String told() {
    return id().replace('-', ' ');
  }

  /** Whether it weighs as much as the other, or more. */
  public boolean atLeast(Severity other) {
    return compareTo(other) <= 0;
  }
}
