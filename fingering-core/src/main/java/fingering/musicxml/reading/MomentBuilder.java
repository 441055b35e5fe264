package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Lists;
import fingering.music.GraceNotes;
import fingering.music.Marks;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Place;
import fingering.music.PlayingStyle;
import fingering.music.Surroundings;
import fingering.musicxml.element.Meter;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.reading.TieChains.Chain;
import fingering.musicxml.reading.TieChains.Onset;
import fingering.musicxml.timeline.PartTimeline;
import fingering.musicxml.timeline.PartTimeline.PizzicatoChange;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Builds the moments of a passage from its notes. */
final class MomentBuilder {

  private static final Comparator<Note> LOWEST_FIRST =
      Comparator.comparingInt(Note::midi).thenComparing(Note::address);

  private record BeatKey(BigFraction from, int beatType) {
    BigFraction number() {
      return from.divide(Meter.beat(beatType)).add(BigFraction.ONE);
    }
  }

  private record HeldNote(Note note, String voice, BigFraction end) {}

  private final PartTimeline part;
  private final TempoMap clock;
  private final StyleSpans styles;
  private final BitSet slurred;
  private final List<Moment> moments = new ArrayList<>();
  private final List<HeldNote> sounding = new ArrayList<>();

  /** A cache, because exact beats are slow and recur in every measure. */
  private final Map<BeatKey, BigFraction> beats = new HashMap<>();

  private int nextChange;
  private boolean plucked;
  private long silentFrom;

  private MomentBuilder(PartTimeline part, TempoMap clock, StyleSpans styles, BitSet slurred) {
    this.part = part;
    this.clock = clock;
    this.styles = styles;
    this.slurred = slurred;
  }

  /**
   * Builds the moments.
   *
   * @param styles the playing styles that words ask for
   * @param starting the notes that begin in the passage
   * @param slurred indices of the slots of the part that a slur joins to the previous slot
   */
  static ImmutableList<Moment> build(
      PartTimeline part,
      TempoMap clock,
      StyleSpans styles,
      BitSet slurred,
      ImmutableList<Onset> starting) {
    MomentBuilder builder = new MomentBuilder(part, clock, styles, slurred);
    int i = 0;
    while (i < starting.size()) {
      int next = i + 1;
      while (next < starting.size() && starting.get(next).start().equals(starting.get(i).start())) {
        next++;
      }
      long gap =
          next == starting.size()
              ? Long.MAX_VALUE
              : clock.micros(starting.get(next).start()) - clock.micros(starting.get(i).start());
      builder.onset(starting.subList(i, next), gap);
      i = next;
    }
    return Moment.withSurroundings(builder.moments);
  }

  /** Adds the grace notes and main notes of one onset time. */
  private void onset(List<Onset> together, long gap) {
    Onset last = together.get(together.size() - 1);
    BigFraction start = last.start();
    sounding.removeIf(note -> Quarters.compare(note.end(), start) <= 0);
    Place place = place(last.chains().get(0).first().note());
    long micros = clock.micros(start);
    long length = last.grace() ? Long.MAX_VALUE : clock.micros(longest(last)) - micros;
    int graces = last.grace() ? together.size() : together.size() - 1;
    double grace = GraceNotes.micros(graces, clock.quarterMicros(start), Math.min(gap, length));
    for (int k = 0; k < graces; k++) {
      long from = micros + Math.round(k * grace);
      moment(together.get(k), place, from, micros + Math.round((k + 1) * grace) - from);
    }
    if (!last.grace()) {
      long late = Math.round(graces * grace);
      moment(last, place, micros + late, length - late);
    }
  }

  private static BigFraction longest(Onset starting) {
    BigFraction longest = starting.chains().get(0).end();
    for (Chain chain : starting.chains()) {
      longest = Quarters.compare(chain.end(), longest) > 0 ? chain.end() : longest;
    }
    return longest;
  }

  private void moment(Onset starting, Place place, long start, long length) {
    List<HeldNote> begun = new ArrayList<>();
    for (Chain chain : starting.chains()) {
      addWithoutDoubling(begun, sounding(chain, starting.grace(), place));
    }
    List<Note> held = new ArrayList<>(sounding.size());
    for (HeldNote earlier : sounding) {
      if (begun.stream().noneMatch(b -> b.note().midi() == earlier.note().midi())) {
        held.add(earlier.note());
      }
    }
    List<Note> notes = Lists.transform(begun, HeldNote::note);
    boolean first = moments.isEmpty();
    boolean plucks = pizzicato(starting);
    moments.add(
        new Moment(
            ImmutableList.sortedCopyOf(LOWEST_FIRST, notes),
            ImmutableList.sortedCopyOf(LOWEST_FIRST, held),
            start,
            length,
            first ? 0 : Math.max(0, start - silentFrom),
            !first && slurred.get(starting.slot()),
            starting.grace(),
            plucks,
            style(starting, plucks),
            Surroundings.ALONE));
    silentFrom = Math.max(silentFrom, start + length);
    if (!starting.grace()) {
      sounding.addAll(begun);
      if (sounding.size() > PartTimeline.MOST_TOGETHER) {
        throw PartTimeline.tooMany(place.toString());
      }
    }
  }

  private static HeldNote sounding(Chain chain, boolean grace, Place place) {
    SoundingNote played = chain.first();
    WrittenNote first = played.note();
    BigFraction length = grace ? BigFraction.ZERO : chain.length();
    return new HeldNote(
        new Note(
            first.address(),
            place,
            first.pitch(),
            played.sounding(),
            first.start(),
            length,
            played.marks()),
        first.voice(),
        chain.end());
  }

  // Unisons of two voices are one note for the hand; unisons in a chord of one voice are for two
  // strings.
  private static void addWithoutDoubling(List<HeldNote> begun, HeldNote added) {
    for (int i = 0; i < begun.size(); i++) {
      HeldNote other = begun.get(i);
      if (isSame(other.note(), added.note()) && !other.voice().equals(added.voice())) {
        boolean longer = Quarters.compare(added.end(), other.end()) > 0;
        HeldNote kept = longer ? added : other;
        HeldNote left = longer ? other : added;
        begun.set(i, withMarks(kept, kept.note().marks().and(left.note().marks())));
        return;
      }
    }
    begun.add(added);
  }

  // A harmonic and a stopped note of the same pitch are different for the hand.
  private static boolean isSame(Note one, Note other) {
    return one.midi() == other.midi() && one.written().midi() == other.written().midi();
  }

  private static HeldNote withMarks(HeldNote note, Marks marks) {
    Note n = note.note();
    Note marked =
        new Note(n.address(), n.place(), n.written(), n.sounding(), n.start(), n.length(), marks);
    return new HeldNote(marked, note.voice(), note.end());
  }

  private Place place(WrittenNote note) {
    Measure measure = part.measures().get(note.measure());
    BigFraction from = note.onset();
    boolean uncounted = part.implicit().contains(measure.index()) || measure.number().equals("0");
    Meter meter = new Meter(measure.beats(), measure.beatType());
    if (measure.index() == 0
        && uncounted
        && Quarters.compare(measure.length(), meter.length()) < 0) {
      from = from.add(meter.length()).subtract(measure.length());
    }
    BigFraction beat = beats.computeIfAbsent(new BeatKey(from, meter.beatType()), BeatKey::number);
    return new Place(measure.index(), measure.number(), note.onset(), beat);
  }

  /**
   * The playing style. Dots under a slur are portato, which joins the notes more than it separates
   * them (common practice). Words for the bow mean nothing to plucked notes.
   */
  private PlayingStyle style(Onset starting, boolean plucks) {
    PlayingStyle words = styles.at(starting.start());
    boolean underSlur = slurred.get(starting.slot()) || slurred.get(starting.slot() + 1);
    if (plucks) {
      return PlayingStyle.PLAIN;
    }
    if (underSlur) {
      return words == PlayingStyle.DETACHED ? PlayingStyle.PLAIN : words;
    }
    boolean marked = starting.chains().stream().anyMatch(chain -> chain.first().note().detached());
    return marked ? PlayingStyle.DETACHED : words;
  }

  private boolean pizzicato(Onset starting) {
    ImmutableList<PizzicatoChange> changes = part.pizzicatoChanges();
    while (nextChange < changes.size()
        && Quarters.compare(changes.get(nextChange).start(), starting.start()) <= 0) {
      plucked = changes.get(nextChange).plucked();
      nextChange++;
    }
    for (Chain chain : starting.chains()) {
      Optional<Boolean> own = chain.first().note().pizzicato();
      if (own.isPresent()) {
        return own.get();
      }
    }
    return plucked;
  }
}
