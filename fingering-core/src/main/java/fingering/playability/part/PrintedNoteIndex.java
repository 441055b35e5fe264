package fingering.playability.part;

import com.google.common.collect.ImmutableList;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.print.Clef;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedPart;

/** Finds printed notes and clefs by the addresses of notes. */
public record PrintedNoteIndex(PrintedPart part) {

  private PrintedMeasure measure(NoteAddress address) {
    return part.measures().get(address.measure() - part.measures().get(0).index());
  }

  /** Returns the printed form of a note. */
  PrintedNote of(Note note) {
    NoteAddress address = note.address();
    ImmutableList<PrintedNote> notes = measure(address).notes();
    int low = 0;
    int high = Math.min(address.note(), notes.size() - 1);
    while (low <= high) {
      int middle = (low + high) >>> 1;
      int at = notes.get(middle).address().note();
      if (at == address.note()) {
        return notes.get(middle);
      }
      low = at < address.note() ? middle + 1 : low;
      high = at < address.note() ? high : middle - 1;
    }
    throw new IllegalStateException("no note is printed at " + address);
  }

  /** Returns the voice of a note as numbered in the file. */
  String voice(Note note) {
    return of(note).voice();
  }

  /** Returns the clef that applies to a note. */
  public Clef clef(Note note) {
    return measure(note.address()).clefAt(note.place().onset());
  }

  /** Returns whether one of these notes has a tremolo, alone or as one of a pair. */
  public boolean tremolo(ImmutableList<Note> notes, PrintedNote.Tremolo.Role role) {
    for (Note note : notes) {
      PrintedNote.Tremolo tremolo = of(note).tremolo();
      if (!tremolo.equals(PrintedNote.Tremolo.NONE) && tremolo.role() == role) {
        return true;
      }
    }
    return false;
  }
}
