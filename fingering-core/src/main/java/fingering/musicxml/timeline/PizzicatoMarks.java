package fingering.musicxml.timeline;

import com.google.common.collect.ArrayListMultimap;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ListMultimap;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.timeline.PartTimeline.PizzicatoChange;
import fingering.musicxml.words.PizzicatoWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Collects the changes between pizzicato and bow in a part. {@code pizz.} holds until {@code arco}.
 * Words for left-hand or snap pizzicato apply only to the notes that begin where they are printed
 * (common practice).
 */
public final class PizzicatoMarks {
  /** Words that apply at one time only. */
  private record SingleMark(String voice, boolean leftHand) {}

  private final List<PizzicatoChange> changes = new ArrayList<>();
  private final ListMultimap<BigFraction, SingleMark> singleMarks = ArrayListMultimap.create();

  /**
   * Adds the words of a direction.
   *
   * @param start quarter notes from the start of the part
   * @param voice the voice that the words apply to, empty for all
   * @return whether they apply at this time only
   */
  public boolean words(List<String> words, BigFraction start, String voice) {
    // A change of typeface separates the words of one direction.
    String joined = String.join(" ", words);
    boolean left = PizzicatoWords.askForLeftHand(joined);
    if (left || PizzicatoWords.askForSnap(joined)) {
      singleMarks.put(start, new SingleMark(voice, left));
      return true;
    }
    for (String each : words) {
      boolean plucked = PizzicatoWords.askForPizzicato(each);
      if (plucked || PizzicatoWords.askForBow(each)) {
        change(plucked, start);
      }
    }
    return false;
  }

  /**
   * Adds a change.
   *
   * @param plucked whether the strings are plucked from there on
   * @param start quarter notes from the start of the part
   */
  public void change(boolean plucked, BigFraction start) {
    changes.add(new PizzicatoChange(start, plucked));
  }

  /** Returns the changes in order of time. */
  public ImmutableList<PizzicatoChange> changes() {
    return ImmutableList.sortedCopyOf(
        Comparator.comparing(PizzicatoChange::start, Quarters.ORDER), changes);
  }

  /** Replaces notes at words for a single time by plucked ones. */
  public void mark(List<WrittenNote> notes) {
    if (!singleMarks.isEmpty()) {
      notes.replaceAll(this::marked);
    }
  }

  private WrittenNote marked(WrittenNote note) {
    WrittenNote marked = note;
    for (SingleMark each : singleMarks.get(note.start())) {
      if (!note.grace() && (each.voice().isEmpty() || each.voice().equals(note.voice()))) {
        marked = each.leftHand() ? marked.leftPlucked() : marked.plucked();
      }
    }
    return marked;
  }
}
