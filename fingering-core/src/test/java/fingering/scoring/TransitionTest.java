package fingering.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.primitives.ImmutableIntArray;
import fingering.music.Moment;
import fingering.music.Music;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** What rules and the scoring see of the music between two moments. Times: common practice. */
class TransitionTest {
  private static final List<Pace> PACES = List.of(Pace.SLOW, Pace.MODERATE, Pace.QUICK);

  private static TimedTransition timed(String events) {
    List<Moment> moments = Music.viola().tempo("quarter=60").notes(events).moments();
    return TimedTransition.between(
        moments.get(moments.size() - 2), moments.get(moments.size() - 1));
  }

  /** The time before the last of some notes, at 60 quarters a minute. */
  private static TransitionTime time(String events) {
    return timed(events).time();
  }

  @Test
  void aDetachedNoteLeavesTheHandItsLastQuarterAndASlurredOneItsLastTenth() {
    assertThat(time("C4/0.25 D4/1").freeMicros()).isEqualTo(62_500);
    assertThat(time("C4/0.25 ~D4/1").freeMicros()).isEqualTo(25_000);
  }

  @Test
  void theHandAlsoHasTheRest() {
    assertThat(time("C4/0.25 r/0.25 D4/1").freeMicros()).isEqualTo(312_500);
  }

  @Test
  void fromAnOpenStringTheHandHasAllTheTimeFromNoteToNote() {
    TransitionTime time = time("E4/1 G3/0.25 D4/1");
    assertThat(time.micros(true)).isEqualTo(250_000);
    assertThat(time.micros(false)).isEqualTo(62_500);
  }

  // A triplet eighth is 333 333 microseconds, and a quarter of it 83 333: arithmetic.
  @Test
  void timesAreRoundedToHalfMillisecondsInFavourOfTheHand() {
    TransitionTime triplet = time("E4/1 C4/1:3 D4/1");
    assertThat(triplet.sinceMicros()).isEqualTo(333_500);
    assertThat(triplet.freeMicros()).isEqualTo(83_500);
  }

  @Test
  void timesAreCappedAtASecond() {
    assertThat(time("C4/2 r/2 D4/1"))
        .isEqualTo(new TransitionTime(TransitionTime.MAX_MICROS, TransitionTime.MAX_MICROS));
  }

  @Test
  void aFifthOfASecondIsNotQuick() {
    assertThat(timed("C4/0.2 D4/1").transition().quick()).isFalse();
    assertThat(timed("C4/0.19 D4/1").transition().quick()).isTrue();
  }

  @Test
  void transitionsThatDifferOnlyInTimeWithinAClassOfPaceAreEqualForTheRules() {
    TimedTransition slow = timed("C4/0.5 D4/0.5 C4/0.5 D4/0.5");
    TimedTransition slower = timed("C4/0.75 D4/0.75 C4/0.75 D4/0.75");
    assertThat(slow.transition()).isEqualTo(slower.transition());
    assertThat(slow.time()).isNotEqualTo(slower.time());
  }

  @Test
  void rulesSeeTheClassOfThePace() {
    assertThat(timed("C4/1 D4/1").transition().pace()).isEqualTo(Pace.SLOW);
    assertThat(timed("C4/0.2 D4/0.2").transition().pace()).isEqualTo(Pace.MODERATE);
    assertThat(timed("C4/0.1 D4/0.1").transition().pace()).isEqualTo(Pace.QUICK);
  }

  private static boolean bit(int bits, int which) {
    return (bits >> which & 1) == 1;
  }

  @Test
  void differentTransitionsHaveDifferentCodes() {
    Set<Integer> codes = new HashSet<>();
    for (int rises = -Transition.LEAP; rises <= Transition.LEAP; rises++) {
      for (int bits = 0; bits < 1024 * 9; bits++) {
        Transition transition =
            new Transition(
                bit(bits, 0),
                bit(bits, 1),
                bit(bits, 2),
                bit(bits, 3),
                bit(bits, 4),
                bit(bits, 5),
                bit(bits, 6),
                bit(bits, 7),
                bit(bits, 8),
                rises,
                PACES.get(bits / 1024 % 3),
                bits / 1024 / 3,
                bit(bits, 9),
                HeldNotes.NONE);
        assertThat(codes.add(transition.code())).as(transition.toString()).isTrue();
      }
    }
  }

  @Test
  void differentContextsHaveDifferentCodes() {
    Set<Long> codes = new HashSet<>();
    LineContext line = LineContext.of(Music.viola().notes("C4/1").moments().get(0));
    for (long hundredths = 0; hundredths <= NoteContext.MAX_HUNDREDTHS; hundredths += 10) {
      for (int sounding = 1; sounding <= 8; sounding++) {
        for (int bits = 0; bits < 16 * 9; bits++) {
          NoteContext context =
              new NoteContext(
                  bit(bits, 0),
                  bit(bits, 1),
                  bit(bits, 2),
                  bit(bits, 3),
                  hundredths,
                  ImmutableIntArray.of(),
                  ImmutableIntArray.of(),
                  sounding,
                  60,
                  PACES.get(bits / 16 % 3),
                  bits / 16 / 3,
                  line);
          assertThat(codes.add(context.code())).as(context.toString()).isTrue();
        }
      }
    }
  }

  /**
   * The search would use the cost of one transition for another if a component were left out of the
   * code.
   */
  @Test
  void everyComponentOfATransitionIsInItsCode() throws ReflectiveOperationException {
    List<Moment> moments = Music.viola().notes("C4/1 D4/1").moments();
    Transition transition = Transition.between(moments.get(0), moments.get(1));
    assertThat(outsideTheCode(transition, Transition::code)).containsExactly("held");
  }

  @Test
  void everyComponentOfAContextIsInItsCodeOrComparedByItself() throws ReflectiveOperationException {
    NoteContext context = NoteContext.of(Music.viola().notes("C4/1").moments().get(0));
    assertThat(outsideTheCode(context, NoteContext::code))
        .containsExactly("trilled", "trilledStruck", "top", "line");
  }

  /** The components of a record whose change does not change a code. */
  private static <R extends Record> List<String> outsideTheCode(R record, Function<R, ?> code)
      throws ReflectiveOperationException {
    RecordComponent[] components = record.getClass().getRecordComponents();
    Class<?>[] types = new Class<?>[components.length];
    Object[] values = new Object[components.length];
    for (int i = 0; i < components.length; i++) {
      types[i] = components[i].getType();
      values[i] = components[i].getAccessor().invoke(record);
    }
    List<String> outside = new ArrayList<>();
    for (int i = 0; i < components.length; i++) {
      Object[] changed = values.clone();
      changed[i] = another(values[i]);
      @SuppressWarnings("unchecked")
      R other = (R) record.getClass().getDeclaredConstructor(types).newInstance(changed);
      if (code.apply(other).equals(code.apply(record))) {
        outside.add(components[i].getName());
      }
    }
    return outside;
  }

  /** Another value of the same type, where it is a number, a truth value or a constant. */
  private static Object another(Object value) {
    if (value instanceof Boolean is) {
      return !is;
    }
    if (value instanceof Integer number) {
      return number + 1;
    }
    if (value instanceof Long number) {
      return number + 1;
    }
    if (value instanceof Enum<?> constant) {
      return Arrays.stream(constant.getDeclaringClass().getEnumConstants())
          .filter(other -> other != constant)
          .findFirst()
          .orElseThrow();
    }
    return value;
  }
}
