package fingering.page.music;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.engraving.drawing.Circled;
import fingering.engraving.ink.Kind;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.practice.Circle;
import java.util.List;
import java.util.Optional;

/** What to circle in a part, as rings on the music. */
public final class Rings {
  private Rings() {}

  /** The rings for what is circled; what has no sign of its own on the music is left out. */
  public static ImmutableList<Circled> of(Passage passage, List<Circle> circles) {
    return circles.stream()
        .flatMap(circle -> ring(passage, circle).stream())
        .collect(ImmutableList.toImmutableList());
  }

  private static Optional<Circled> ring(Passage passage, Circle circle) {
    ImmutableSet<Kind> kinds = kinds(circle.kind());
    Optional<Measure> measure = passage.measure(circle.place().measureIndex());
    return kinds.isEmpty()
        ? Optional.empty()
        : measure.map(m -> new Circled(m.start().add(circle.place().onset()).doubleValue(), kinds));
  }

  private static ImmutableSet<Kind> kinds(Circle.Kind kind) {
    return switch (kind) {
      case SUDDEN -> ImmutableSet.of(Kind.DYNAMIC);
      case DYNAMIC -> ImmutableSet.of(Kind.DYNAMIC, Kind.HAIRPIN);
      case LONG_HAIRPIN -> ImmutableSet.of(Kind.HAIRPIN);
      case CHANGE, WORDS -> ImmutableSet.of(Kind.WORDS, Kind.TEMPO, Kind.DYNAMIC);
      case SHIFT -> ImmutableSet.of(Kind.FINGER);
      case READING -> ImmutableSet.of(Kind.ACCIDENTAL, Kind.HEAD);
      case ACCENT -> ImmutableSet.of(Kind.ARTICULATION);
      case REPEAT -> ImmutableSet.of();
    };
  }
}
