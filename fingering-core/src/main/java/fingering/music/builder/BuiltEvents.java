package fingering.music.builder;

import com.google.common.collect.ImmutableList;
import fingering.music.Marks;
import fingering.music.Note;
import fingering.music.PlayingStyle;
import fingering.music.builder.BuiltMoments.Event;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** The notes of a passage built in code, with the ties and slurs between them. */
final class BuiltEvents {
  private final BuiltMeasures measures;
  private final List<Written> all = new ArrayList<>();

  /** The notes of the last event, at which a tie may begin; none after a rest or a grace note. */
  private ImmutableList<Chain> last = ImmutableList.of();

  /** The notes at which a tie has begun that has not ended. */
  private ImmutableList<Chain> tied = ImmutableList.of();

  /** Whether grace notes wait for the note that they belong to. */
  private boolean graced;

  /** For each open slur, the number of events before it. */
  private final List<Integer> slurs = new ArrayList<>();

  /** A note that grows with the notes tied to it. */
  private static final class Chain {
    private Note note;

    Chain(Note note) {
      this.note = note;
    }

    void set(BigFraction length, Marks marks) {
      Note n = note;
      note = new Note(n.address(), n.place(), n.written(), n.sounding(), n.start(), length, marks);
    }
  }

  /** An event whose notes may still grow. */
  private record Written(ImmutableList<Chain> begun, Event event) {
    Event finished() {
      return new Event(
          event.start(),
          begun.stream().map(chain -> chain.note).collect(ImmutableList.toImmutableList()),
          event.grace(),
          event.joined(),
          event.plucked(),
          event.style());
    }
  }

  BuiltEvents(BuiltMeasures measures) {
    this.measures = measures;
  }

  /** Adds notes that begin together, or continue a tie. */
  void chord(List<Note> notes, boolean plucked, PlayingStyle style) {
    List<Chain> open = new ArrayList<>(tied);
    ImmutableList.Builder<Chain> begun = ImmutableList.builder();
    ImmutableList.Builder<Chain> sounding = ImmutableList.builder();
    for (Note note : notes) {
      Optional<Chain> before =
          open.stream().filter(one -> one.note.midi() == note.midi()).findFirst();
      if (before.isPresent()) {
        Chain chain = before.get();
        open.remove(chain);
        chain.set(chain.note.length().add(note.length()), chain.note.marks());
        sounding.add(chain);
      } else {
        Chain chain = new Chain(note);
        begun.add(chain);
        sounding.add(chain);
      }
    }
    if (!tied.isEmpty() && open.size() == tied.size()) {
      throw measures.refusal(
          "no note continues the tie from %s; repeat that pitch, or leave out tie()"
              .formatted(
                  tied.stream()
                      .map(chain -> chain.note.written().display())
                      .collect(Collectors.joining(" and "))));
    }
    add(begun.build(), false, plucked, style);
    last = sounding.build();
    tied = ImmutableList.of();
    graced = false;
  }

  /** Adds a grace note. */
  void grace(Note note, boolean plucked, PlayingStyle style) {
    requireNoTie("a grace note");
    add(ImmutableList.of(new Chain(note)), true, plucked, style);
    last = ImmutableList.of();
    graced = true;
  }

  private void add(ImmutableList<Chain> begun, boolean grace, boolean plucked, PlayingStyle style) {
    boolean joined = !slurs.isEmpty() && slurs.get(0) < all.size();
    BigFraction start = measures.time();
    all.add(
        new Written(begun, new Event(start, ImmutableList.of(), grace, joined, plucked, style)));
  }

  /** Adds a rest. */
  void rest() {
    requireFinished("a rest");
    last = ImmutableList.of();
  }

  /** Ties the last notes to the next. */
  void tie() {
    if (last.isEmpty()) {
      throw measures.refusal("tie() comes after the note at which the tie begins");
    }
    tied = last;
  }

  /** Begins a slur at the next note. */
  void beginSlur() {
    slurs.add(all.size());
  }

  /** Ends the slur that began last at the last note. */
  void endSlur() {
    if (all.size() < slurs.remove(slurs.size() - 1) + 2) {
      throw measures.refusal("a slur joins at least two notes; add more to it");
    }
  }

  /** Sets the marks of the last notes. */
  void marks(Marks marks) {
    ImmutableList<Chain> begun =
        last.isEmpty() ? ImmutableList.of() : all.get(all.size() - 1).begun();
    if (begun.isEmpty()) {
      throw measures.refusal(
          "marks(…) come after the note that has them, and after the first of tied notes");
    }
    begun.forEach(chain -> chain.set(chain.note.length(), marks));
  }

  boolean isEmpty() {
    return all.isEmpty();
  }

  /** Checks that no tie and no grace note waits for a note. */
  void requireFinished(String next) {
    requireNoTie(next);
    if (graced) {
      throw measures.refusal(
          "%s follows grace notes; add the note that they belong to".formatted(next));
    }
  }

  private void requireNoTie(String next) {
    if (!tied.isEmpty()) {
      throw measures.refusal(
          "%s follows tie(); add the note that the tie leads to, or leave out tie()"
              .formatted(next));
    }
  }

  /** The events, in order of time. */
  ImmutableList<Event> finished() {
    return all.stream().map(Written::finished).collect(ImmutableList.toImmutableList());
  }
}
