package fingering.demand;

import fingering.userfile.KnownKeys;

/** The keys of demands in files; {@link DemandParser} reads their values. */
public final class DemandKeys {
  /** The keys, with an example each. */
  public static final KnownKeys ALL =
      KnownKeys.of(
          "a brief",
          "allow: 1, half",
          "strings: C, G",
          "avoid: extensions",
          "stay: 3@6-11",
          "fix: 12.3=III/4",
          "keep-plan: plan.json@9-16",
          "show: 3=8",
          "show-stay: 3=2",
          "show-shift: up first-finger=2",
          "show-technique: fourth-finger");

  private DemandKeys() {}
}
