package fingering.musicxml.timeline;

import com.google.common.collect.ImmutableList;

/**
 * What was left out or rounded when a part was read.
 *
 * @param microtones number of pitches that were rounded to the nearest semitone
 * @param unpitched number of notes without pitch, which were left out
 * @param unprinted number of notes with a pitch that the file marks as not printed, which were left
 *     out
 * @param faults remarks on what could not be read
 */
public record LeftOut(int microtones, int unpitched, int unprinted, ImmutableList<String> faults) {

  /** Returns remarks on it, without full stop. */
  public ImmutableList<String> remarks() {
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    if (microtones > 0) {
      remarks.add(
          "%d %s rounded to the nearest semitone"
              .formatted(microtones, microtones == 1 ? "microtone is" : "microtones are"));
    }
    if (unpitched > 0) {
      remarks.add(
          "%d %s without pitch left out".formatted(unpitched, unpitched == 1 ? "note" : "notes"));
    }
    if (unprinted > 0) {
      remarks.add(
          unprinted == 1
              ? "1 note that is not printed is left out"
              : unprinted + " notes that are not printed are left out");
    }
    return remarks.addAll(faults).build();
  }
}
