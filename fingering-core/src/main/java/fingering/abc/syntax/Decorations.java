package fingering.abc.syntax;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.abc.syntax.Decoration.Kind;
import java.util.Optional;
import java.util.regex.Pattern;

/** The decorations of the standard (ABC 2.1, sections 'Decorations' and 'Redefinable symbols'). */
public final class Decorations {
  /** The default decorations of letters. */
  public static final ImmutableMap<Character, Optional<Decoration>> SHORT;

  private static final ImmutableMap<String, Decoration> NAMED;

  private static final ImmutableList<String> DYNAMICS =
      ImmutableList.of("pppp", "ppp", "pp", "p", "mp", "mf", "f", "ff", "fff", "ffff", "sfz");

  /** By their names in small letters. */
  private static final ImmutableMap<String, Decoration> LOWER;

  /** What may be a decoration of another program. */
  private static final Pattern NAME = Pattern.compile("[^\\s|\\[\\]{}\"]{1,30}");

  /** Notes between two line breaks. */
  private static final Pattern NOTES = Pattern.compile("[A-Ga-gz0-9,'/]{2,}");

  static {
    ImmutableMap.Builder<String, Decoration> all = ImmutableMap.builder();
    plain(all, Kind.ARTICULATION, "staccato", "staccato");
    plain(all, Kind.ARTICULATION, "accent", ">", "accent", "emphasis");
    plain(all, Kind.ARTICULATION, "tenuto", "tenuto");
    plain(all, Kind.ARTICULATION, "staccatissimo", "wedge");
    plain(all, Kind.ARTICULATION, "breath-mark", "breath");
    plain(all, Kind.ARTICULATION, "scoop", "slide");
    plain(all, Kind.ORNAMENT, "trill-mark", "trill");
    // Elements are named as in print: the plain mordent has the lower note, the inverted one the
    // upper.
    plain(all, Kind.ORNAMENT, "mordent", "lowermordent", "mordent");
    plain(all, Kind.ORNAMENT, "inverted-mordent", "uppermordent", "pralltriller");
    plain(all, Kind.ORNAMENT, "turn", "turn");
    plain(all, Kind.ORNAMENT, "inverted-turn", "invertedturn");
    with(all, Kind.ORNAMENT, "turn", "slash=yes", "turnx");
    with(all, Kind.ORNAMENT, "inverted-turn", "slash=yes", "invertedturnx");
    with(all, Kind.ORNAMENT, "wavy-line", "type=start", "trill(");
    with(all, Kind.ORNAMENT, "wavy-line", "type=stop", "trill)");
    plain(all, Kind.BOWING, "up-bow", "upbow");
    plain(all, Kind.BOWING, "down-bow", "downbow");
    plain(all, Kind.BOWING, "snap-pizzicato", "snap");
    plain(all, Kind.LEFT_HAND, "stopped", "plus", "+");
    plain(all, Kind.LEFT_HAND, "harmonic", "open");
    plain(all, Kind.LEFT_HAND, "thumb-position", "thumb");
    for (String finger : ImmutableList.of("0", "1", "2", "3", "4")) {
      all.put(finger, new Decoration(finger, Kind.LEFT_HAND, "fingering", "", finger));
    }
    plain(all, Kind.NOTATION, "fermata", "fermata");
    with(all, Kind.NOTATION, "fermata", "type=inverted", "invertedfermata");
    plain(all, Kind.NOTATION, "arpeggiate", "arpeggio");
    DYNAMICS.forEach(mark -> plain(all, Kind.DYNAMICS, mark, mark));
    with(all, Kind.WEDGE, "wedge", "type=crescendo", "crescendo(", "<(");
    with(all, Kind.WEDGE, "wedge", "type=diminuendo", "diminuendo(", ">(");
    with(all, Kind.WEDGE, "wedge", "type=stop", "crescendo)", "<)", "diminuendo)", ">)");
    plain(all, Kind.DIRECTION, "segno", "segno");
    plain(all, Kind.DIRECTION, "coda", "coda");
    words(all, "D.S.", "D.S.");
    words(all, "D.C.", "D.C.");
    words(all, "dacoda", "Da Coda");
    words(all, "dacapo", "Da Capo");
    words(all, "fine", "Fine");
    // ABC 2.2.
    plain(all, Kind.ARTICULATION, "strong-accent", "marcato", "^");
    words(all, "D.S.alcoda", "D.S. al Coda");
    words(all, "D.S.alfine", "D.S. al Fine");
    words(all, "D.C.alcoda", "D.C. al Coda");
    words(all, "D.C.alfine", "D.C. al Fine");
    // No string player has a fifth finger.
    plain(all, Kind.LEFT_OUT, "", "5", "roll", "shortphrase", "mediumphrase", "longphrase");
    NAMED = all.buildOrThrow();
    LOWER =
        NAMED.values().stream()
            .collect(ImmutableMap.toImmutableMap(sign -> Ascii.toLowerCase(sign.name()), s -> s));

    ImmutableMap.Builder<Character, Optional<Decoration>> letters = ImmutableMap.builder();
    ImmutableMap.<Character, String>builder()
        .put('.', "staccato")
        .put('~', "roll")
        .put('H', "fermata")
        .put('L', "accent")
        .put('M', "lowermordent")
        .put('O', "coda")
        .put('P', "uppermordent")
        .put('S', "segno")
        .put('T', "trill")
        .put('u', "upbow")
        .put('v', "downbow")
        .buildOrThrow()
        .forEach((letter, name) -> letters.put(letter, Optional.ofNullable(NAMED.get(name))));
    SHORT = letters.buildOrThrow();
  }

  private Decorations() {}

  private static void plain(
      ImmutableMap.Builder<String, Decoration> all, Kind kind, String element, String... names) {
    with(all, kind, element, "", names);
  }

  private static void with(
      ImmutableMap.Builder<String, Decoration> all,
      Kind kind,
      String element,
      String attribute,
      String... names) {
    for (String name : names) {
      all.put(name, new Decoration(name, kind, element, attribute, ""));
    }
  }

  private static void words(
      ImmutableMap.Builder<String, Decoration> all, String name, String words) {
    all.put(name, new Decoration(name, Kind.DIRECTION, "words", "", words));
  }

  /**
   * Returns a decoration by its name, in any case; empty if the standard has no such decoration.
   */
  public static Optional<Decoration> named(String name) {
    return Optional.ofNullable(NAMED.get(name))
        .or(() -> Optional.ofNullable(LOWER.get(Ascii.toLowerCase(name))));
  }

  /**
   * Returns a decoration by its name, in any case; empty, with a remark, if the standard has no
   * such decoration.
   *
   * @param start the position where it is typed
   */
  public static Optional<Decoration> named(String name, LineCursor start, Repairs repairs) {
    Optional<Decoration> found = named(name);
    if (found.isEmpty()) {
      repairs.add(
          start, "!%s! is not a decoration of the ABC standard; it was left out".formatted(name));
    }
    return found;
  }

  /**
   * Returns the index of the sign that ends the decoration at an index of a text; -1 if the sign
   * there begins none. Old tunes use a single exclamation mark for a line break, and the plus sign
   * for decorations (ABC 2.1, section 'Outdated syntax').
   */
  public static int end(String text, int at) {
    char sign = text.charAt(at);
    int end = sign == '!' || sign == '+' ? text.indexOf(sign, at + 1) : -1;
    if (sign == '+' && text.startsWith("+++", at)) {
      end = at + 2;
    }
    if (end < 0) {
      return -1;
    }
    String name = text.substring(at + 1, end).strip();
    boolean known = named(name).isPresent();
    boolean maybe = sign == '!' && NAME.matcher(name).matches() && !NOTES.matcher(name).matches();
    return known || maybe ? end : -1;
  }
}
