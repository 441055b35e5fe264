package fingering.playability;

import java.util.Locale;

/** The severity of a finding, the most severe first. */
public enum Severity {
  /** No player at any level can play it as written. */
  UNPLAYABLE,
  /** It can go wrong with players at this level. */
  RISKY,
  /** It can be played, but the arranger may want to know, or to mark the part more clearly. */
  WORTH_KNOWING;

  /** Returns the name in data: {@code worth-knowing}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns the name to show: {@code worth knowing}. */
  public String label() {
    return id().replace('-', ' ');
  }

  /** Returns whether this is as severe as the other, or more severe. */
  public boolean atLeast(Severity other) {
    return compareTo(other) <= 0;
  }
}
