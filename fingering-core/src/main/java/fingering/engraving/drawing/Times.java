package fingering.engraving.drawing;

import com.google.common.collect.ImmutableList;
import fingering.engraving.notes.MeasureNotes;
import fingering.music.NoteAddress;
import fingering.music.print.PrintedNote;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The times of all notes of a part, in quarter notes from its start, and what is tied to what. */
public final class Times {
  private final Map<NoteAddress, Double> times = new HashMap<>();
  private final Optional<NoteAddress> first;

  /** Notes that a tie leads to, by the time of that note, and where it comes from. */
  private record Tie(NoteAddress to, double from, double at) {}

  private final List<Tie> ties = new ArrayList<>();

  /** The times of the notes of some measures. */
  public Times(List<MeasureNotes> measures) {
    Map<Pitch, Double> open = new HashMap<>();
    for (MeasureNotes measure : measures) {
      double start = measure.measure().start().doubleValue();
      for (PrintedNote note : measure.printed().notes()) {
        double time = start + note.onset().doubleValue();
        times.put(note.address(), time);
        if (note.rest()) {
          continue;
        }
        Pitch pitch = note.pitch().orElseThrow();
        Double from = open.remove(pitch);
        if (from != null) {
          ties.add(new Tie(note.address(), from, time));
        }
        if (note.tied()) {
          open.put(pitch, time);
        }
      }
    }
    first = times.keySet().stream().min(NoteAddress::compareTo);
  }

  /** The time of a note; before or after everything if it is not among the measures. */
  double of(NoteAddress address) {
    Double time = times.get(address);
    if (time != null) {
      return time;
    }
    return first.filter(note -> address.compareTo(note) < 0).isPresent()
        ? Double.NEGATIVE_INFINITY
        : Double.POSITIVE_INFINITY;
  }

  /** The notes of a system to which ties lead from the system before. */
  ImmutableList<NoteAddress> tiedInto(Frame frame) {
    return ties.stream()
        .filter(tie -> tie.from() < frame.from() - 1e-9 && tie.at() >= frame.from() - 1e-9)
        .filter(tie -> frame.spot(tie.to()).isPresent())
        .map(Tie::to)
        .collect(ImmutableList.toImmutableList());
  }
}
