package fingering.musicxml.writing;

import com.google.common.collect.ImmutableSet;
import fingering.musicxml.words.PizzicatoWords;
import fingering.musicxml.words.TempoWords;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a direction says, and its text for another place in a score. */
final class DirectionCopy {
  private static final ImmutableSet<String> JUMPS =
      ImmutableSet.of("dacapo", "dalsegno", "segno", "coda", "tocoda", "fine");

  /** What all players of an ensemble must read, though it is often printed over the top part. */
  enum Shared {
    TEMPO,
    REHEARSAL,
    SIGN,
    JUMP,
    SYSTEM_TEXT
  }

  private DirectionCopy() {}

  /** What all players must read in a direction or a sound. */
  static ImmutableSet<Shared> shared(XmlNode node) {
    ImmutableSet.Builder<Shared> kinds = ImmutableSet.builder();
    if (hasTempo(node)) {
      kinds.add(Shared.TEMPO);
    }
    if (hasType(node, "rehearsal")) {
      kinds.add(Shared.REHEARSAL);
    }
    if (hasType(node, "segno") || hasType(node, "coda")) {
      kinds.add(Shared.SIGN);
    }
    if (JUMPS.stream().anyMatch(jump -> !soundAttribute(node, jump).isEmpty())) {
      kinds.add(Shared.JUMP);
    }
    String system = node.attribute("system");
    if (system.equals("only-top") || system.equals("also-top")) {
      kinds.add(Shared.SYSTEM_TEXT);
    }
    return kinds.build();
  }

  private static boolean hasTempo(XmlNode node) {
    return hasType(node, "metronome")
        || soundTempo(node).isPresent()
        || TempoWords.read(words(node)).isPresent();
  }

  /** Whether a direction gives a tempo by itself, and not relative to another. */
  static boolean isTempoHeading(XmlNode node) {
    boolean number = types(node, "metronome").anyMatch(metronome -> metronome.has("per-minute"));
    return number
        || TempoWords.read(words(node))
            .filter(read -> read.kind() == TempoWords.Kind.BEATS)
            .isPresent();
  }

  /** The tempo for playback. */
  static Optional<String> soundTempo(XmlNode node) {
    return Optional.of(soundAttribute(node, "tempo")).filter(tempo -> !tempo.isEmpty());
  }

  private static String soundAttribute(XmlNode node, String name) {
    return node.is("sound")
        ? node.attribute(name)
        : node.first("sound").map(sound -> sound.attribute(name)).orElse("");
  }

  /** Whether a direction changes between bow and pizzicato; empty if it does neither. */
  static Optional<Boolean> plucked(XmlNode direction) {
    String words = words(direction);
    if (PizzicatoWords.askForLeftHand(words) || PizzicatoWords.askForSnap(words)) {
      return Optional.empty();
    }
    return PizzicatoWords.askForPizzicato(words)
        ? Optional.of(true)
        : Optional.of(false).filter(none -> PizzicatoWords.askForBow(words));
  }

  /** Whether a direction contains an element of a kind. */
  static boolean hasType(XmlNode direction, String name) {
    return types(direction, name).findAny().isPresent();
  }

  /** The elements of a kind in a direction. */
  static Stream<XmlNode> types(XmlNode direction, String name) {
    return direction.all("direction-type").flatMap(type -> type.all(name));
  }

  private static String words(XmlNode direction) {
    return types(direction, "words").map(XmlNode::text).collect(Collectors.joining(" "));
  }

  /**
   * The text of a direction or sound for another part; empty if there is nothing to write.
   *
   * @param offset the offset to write, in units of duration of that part; 0 to write none
   * @param sound whether to keep its playback
   */
  static Optional<String> text(XmlNode node, long offset, boolean sound) {
    if (node.is("sound")) {
      return Optional.of(node.copy());
    }
    String types =
        node.all("direction-type")
            .filter(type -> !type.children().isEmpty())
            .map(XmlNode::copy)
            .collect(Collectors.joining());
    Optional<String> played = node.first("sound").filter(one -> sound).map(XmlNode::copy);
    if (types.isEmpty()) {
      return played;
    }
    String later = offset == 0 ? "" : "<offset>" + offset + "</offset>";
    return Optional.of(node.tag() + types + later + played.orElse("") + "</direction>");
  }
}
