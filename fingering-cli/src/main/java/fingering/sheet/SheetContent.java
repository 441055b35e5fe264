package fingering.sheet;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What an audition sheet says, as it is written. Each {@code with} method returns a copy.
 *
 * @param keys the values of its keys, without the pieces, in their order
 * @param pieces the scales and excerpts; all scales together, and all excerpts
 */
public record SheetContent(
    ImmutableListMultimap<String, String> keys, ImmutableList<Piece> pieces) {

  /**
   * A scale or an excerpt.
   *
   * @param scale whether it is a scale
   * @param keys the values of its keys, in their order
   */
  public record Piece(boolean scale, ImmutableListMultimap<String, String> keys) {
    /** The only or first value of a key; empty if the key is not given. */
    public String value(String key) {
      return keys.get(key).stream().findFirst().orElse("");
    }

    /** A copy with another value of a key; without the key if the value is empty. */
    public Piece with(String key, String value) {
      Set<String> order = new LinkedHashSet<>(keys.keySet());
      order.add(key);
      ImmutableListMultimap.Builder<String, String> changed = ImmutableListMultimap.builder();
      for (String each : order) {
        changed.putAll(
            each,
            !each.equals(key)
                ? keys.get(each)
                : value.isEmpty() ? ImmutableList.of() : ImmutableList.of(value));
      }
      return new Piece(scale, changed.build());
    }
  }

  /** Puts the pieces of one kind together; the kind of the first piece comes first. */
  public SheetContent {
    boolean scalesFirst = pieces.isEmpty() || pieces.get(0).scale();
    pieces =
        Stream.concat(
                pieces.stream().filter(piece -> piece.scale() == scalesFirst),
                pieces.stream().filter(piece -> piece.scale() != scalesFirst))
            .collect(ImmutableList.toImmutableList());
  }

  /** The student, by the name that the sheet gives; empty for anyone. */
  public String student() {
    return value("student");
  }

  /** The only or first value of a key; empty if the key is not given. */
  public String value(String key) {
    return keys.get(key).stream().findFirst().orElse("");
  }

  /** A copy with other values of a key; without the key if there are none. */
  public SheetContent with(String key, Iterable<String> values) {
    Set<String> order = new LinkedHashSet<>(keys.keySet());
    order.add(key);
    ImmutableListMultimap.Builder<String, String> changed = ImmutableListMultimap.builder();
    for (String each : order) {
      changed.putAll(each, each.equals(key) ? values : keys.get(each));
    }
    return new SheetContent(changed.build(), pieces);
  }

  /** A copy with one more piece. */
  public SheetContent with(Piece piece) {
    return new SheetContent(keys, ImmutableList.<Piece>builder().addAll(pieces).add(piece).build());
  }

  /** A copy without a piece, by its index from 0; the same if there is none. */
  public SheetContent without(int piece) {
    ImmutableList.Builder<Piece> others = ImmutableList.builder();
    for (int i = 0; i < pieces.size(); i++) {
      if (i != piece) {
        others.add(pieces.get(i));
      }
    }
    return new SheetContent(keys, others.build());
  }

  /** Whether there is another piece of the same kind some places away. */
  public boolean canMove(int piece, int places) {
    int other = piece + places;
    return inside(piece) && inside(other) && pieces.get(piece).scale() == pieces.get(other).scale();
  }

  /** A copy in which a piece and the one some places away change places; the same if it cannot. */
  public SheetContent moved(int piece, int places) {
    if (!canMove(piece, places)) {
      return this;
    }
    List<Piece> moved = new ArrayList<>(pieces);
    Collections.swap(moved, piece, piece + places);
    return new SheetContent(keys, ImmutableList.copyOf(moved));
  }

  /** A copy with another piece in place of one, by its index from 0; the same if there is none. */
  public SheetContent replacing(int piece, Piece other) {
    if (!inside(piece)) {
      return this;
    }
    List<Piece> changed = new ArrayList<>(pieces);
    changed.set(piece, other);
    return new SheetContent(keys, ImmutableList.copyOf(changed));
  }

  private boolean inside(int piece) {
    return piece >= 0 && piece < pieces.size();
  }
}
