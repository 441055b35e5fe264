package fingering.musicxml.timeline;

import com.google.common.collect.ArrayListMultimap;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ListMultimap;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.timeline.PartTimeline.Plucking;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Collects how the strings of a part are plucked. {@code pizz.} holds until {@code arco}; the left
 * hand, and a snap, pluck only what is struck where their words stand (common practice).
 */
public final class PizzicatoMarks {
  private static final String LEFT_HAND =
      "(?:l\\.? ?h\\b|left\\b|m\\.? ?s\\b|m\\.? ?g\\b|(?:mano )?sinistra|main gauche|linken? hand)";

  /** As in {@code l.h. pizz.}, {@code pizz. m.s.}, {@code left-hand pizz}; or a mere plus sign. */
  private static final Pattern LEFT =
      Pattern.compile(
          "\\W*(?:%1$s\\W*(?:hand\\W+)?pizz.*|pizz[a-z]*\\W*(?:\\S+ ){0,3}\\W*%1$s.*)|\\W*\\+\\W*"
              .formatted(LEFT_HAND),
          Pattern.DOTALL);

  /** As in {@code snap pizz.} and {@code Bartók pizz.} */
  private static final Pattern SNAP =
      Pattern.compile("\\W*(?:snap|bart.{1,2}k)\\W*pizz.*", Pattern.DOTALL);

  private record Once(String voice, boolean left) {}

  private final List<Plucking> lasting = new ArrayList<>();
  private final ListMultimap<BigFraction, Once> once = ArrayListMultimap.create();

  /** Whether words ask the left hand to pluck. */
  public static boolean asksLeftHand(String words) {
    return LEFT.matcher(normal(words)).matches();
  }

  private static String normal(String words) {
    return words.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  /**
   * Takes the words of one direction.
   *
   * @param start where it stands, in quarter notes from the start of the part
   * @param voice the voice it is for, empty for all
   * @return whether they are for one moment only
   */
  public boolean words(List<String> words, BigFraction start, String voice) {
    // A change of type face parts the words of one direction.
    String joined = normal(String.join(" ", words));
    boolean left = LEFT.matcher(joined).matches();
    if (left || SNAP.matcher(joined).matches()) {
      once.put(start, new Once(voice, left));
      return true;
    }
    for (String each : words) {
      String word = normal(each);
      if (word.startsWith("pizz") || word.startsWith("arco")) {
        sound(word.startsWith("pizz"), start);
      }
    }
    return false;
  }

  /** Takes a change between bow and plucking at that time. */
  public void sound(boolean plucked, BigFraction start) {
    lasting.add(new Plucking(start, plucked));
  }

  /** The changes between bow and plucking, in order of time. */
  public ImmutableList<Plucking> changes() {
    return ImmutableList.sortedCopyOf(
        Comparator.comparing(Plucking::start, Quarters.ORDER), lasting);
  }

  /** Marks the notes that are plucked where such words stand. */
  public void mark(List<WrittenNote> notes) {
    if (!once.isEmpty()) {
      notes.replaceAll(this::marked);
    }
  }

  private WrittenNote marked(WrittenNote note) {
    WrittenNote marked = note;
    for (Once each : once.get(note.start())) {
      if (!note.grace() && (each.voice().isEmpty() || each.voice().equals(note.voice()))) {
        marked = each.left() ? marked.leftPlucked() : marked.plucked();
      }
    }
    return marked;
  }
}
