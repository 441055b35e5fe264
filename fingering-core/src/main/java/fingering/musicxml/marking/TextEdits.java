package fingering.musicxml.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Replacements to make in a text, gathered in any order and then made all at once. */
final class TextEdits {

  private record Edit(int start, int end, String text) {}

  private final List<Edit> edits = new ArrayList<>();

  /** Puts text in at a place; what is put in twice at one place keeps the order of the calls. */
  void insert(int place, String text) {
    edits.add(new Edit(place, place, text));
  }

  /** Puts text in place of what lies from {@code start} up to {@code end}. */
  void replace(int start, int end, String text) {
    edits.add(new Edit(start, end, text));
  }

  /** The text with the edits made; everything else is copied as it is. */
  String applyTo(String original) {
    List<Edit> inOrder = new ArrayList<>(edits);
    inOrder.sort(Comparator.comparingInt(Edit::start));
    int added = inOrder.stream().mapToInt(edit -> edit.text().length()).sum();
    StringBuilder out = new StringBuilder(Math.addExact(original.length(), added));
    int copied = 0;
    for (Edit edit : inOrder) {
      if (edit.start() < copied) {
        throw new IllegalStateException("Edits overlap at character %d".formatted(edit.start()));
      }
      out.append(original, copied, edit.start()).append(edit.text());
      copied = edit.end();
    }
    return out.append(original, copied, original.length()).toString();
  }
}
