package fingering.musicxml.xml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Edits of a text, which are collected in any order and then applied together. */
public final class TextEdits {

  private record Edit(int start, int end, String text) {}

  private final List<Edit> edits = new ArrayList<>();

  /** Inserts text. Several insertions at one position keep the order of the calls. */
  public void insert(int position, String text) {
    edits.add(new Edit(position, position, text));
  }

  /** Replaces the text from {@code start} to {@code end}, exclusive. */
  public void replace(int start, int end, String text) {
    edits.add(new Edit(start, end, text));
  }

  /** Returns the edited text; everything else is unchanged. */
  public String applyTo(String original) {
    List<Edit> inOrder = new ArrayList<>(edits);
    inOrder.sort(Comparator.comparingInt(Edit::start).thenComparingInt(Edit::end));
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
