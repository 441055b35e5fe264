package fingering.page.student;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.page.live.StudentView;
import fingering.player.FingerPattern;
import fingering.player.Player;
import fingering.player.PlayerFile;
import fingering.tables.Position;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StudentFormTest {
  private static final String VIOLA = "instrument: viola$";

  private static Player player(String lines) {
    return PlayerFile.parse("imke.yaml", lines.replace('$', '\n'));
  }

  private static StudentView view(StudentForm form) {
    return form.view("", "", "", ImmutableMap.of(), ImmutableList.of());
  }

  private static Map<String, String> fields(StudentForm form) {
    return new HashMap<>(view(form).fields());
  }

  /** What is ticked, in words. */
  private static List<String> ticked(StudentForm form) {
    return view(form).groups().stream()
        .flatMap(group -> group.ticks().stream())
        .filter(StudentView.Tick::ticked)
        .map(StudentView.Tick::name)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "instrument: viola",
        "hand: large",
        "preset: common-practice$instrument: violin$size: 3/4$hand: small",
        "instrument: viola$size: 15.5$hand: 102.5mm",
        "instrument: viola$positions: [half, 1, 3]$patterns: [0-1, apart]$shifts: [rest, slur]",
        "instrument: viola$positions: 1-4$extensions: none$shifts: none",
        "instrument: violin$positions: [1, 3½, 9]",
        "instrument: cello$positions: 1-4, thumb$patterns: [closed, extended back, thumb]",
        "instrument: bass$positions: [half, 1, 2½, 5½, thumb]$patterns: closed",
        "positions: [1, 4½]$patterns: [closed, 0-1]$extensions: first back"
      })
  void formSaysWhatTheFileSays(String lines) {
    StudentForm form = StudentForm.of(player(lines));

    assertThat(form.read().errors()).isEmpty();
    assertThat(form.read().player()).isEqualTo(player(lines));
  }

  @Test
  void newStudentIsABeginnerWithTheUsualSkillsOfTheInstrument() {
    StudentForm fresh = StudentForm.fresh();
    assertThat(ticked(fresh)).containsExactly("1st", "none yet", "none yet");
    assertThat(fresh.read().errors()).containsOnlyKeys("instrument");

    Map<String, String> typed = fields(fresh);
    typed.put("instrument", "viola");
    StudentForm viola = StudentForm.typed(typed, Optional.empty()).shaped();

    assertThat(viola.read().errors()).isEmpty();
    assertThat(viola.read().player())
        .isEqualTo(
            player(
                VIOLA
                    + "preset: beginner$positions: 1$patterns: [1-2, 2-3]$extensions: none$shifts: none"));

    typed = fields(viola);
    typed.put("level", "advanced");
    assertThat(ticked(StudentForm.typed(typed, Optional.empty()).shaped())).isEmpty();
  }

  @Test
  void ownTicksStayWhenLevelOrInstrumentChange() {
    Map<String, String> typed = fields(StudentForm.fresh());
    typed.put("positions-6", "on");
    typed.put("instrument", "cello");

    StudentForm form = StudentForm.typed(typed, Optional.empty()).shaped();

    assertThat(ticked(form)).containsExactly("1st", "3rd", "none yet", "none yet");
    assertThat(form.patterns())
        .containsExactly(
            FingerPattern.CLOSED,
            FingerPattern.EXTENDED_BACK,
            FingerPattern.EXTENDED_FORWARD,
            FingerPattern.THUMB);
  }

  @Test
  void knownStudentKeepsTheTicksWhenTheLevelChanges() {
    Player imke = player(VIOLA + "preset: beginner$positions: [1, 3]");
    Map<String, String> typed = fields(StudentForm.of(imke));
    typed.put("level", "intermediate");

    assertThat(ticked(StudentForm.typed(typed, Optional.of(imke)).shaped()))
        .containsExactly("1st", "3rd");
  }

  @Test
  void positionsBetweenTwoOthersGoWithThem() {
    Player imke = player(VIOLA + "positions: 1-3");
    StudentForm form = StudentForm.of(imke);
    assertThat(ticked(form)).containsExactly("1st", "2nd", "3rd");

    Map<String, String> typed = fields(form);
    typed.remove("positions-6");

    assertThat(
            StudentForm.typed(typed, Optional.of(imke)).read().player().positions().orElseThrow())
        .containsExactlyInAnyOrder(Position.FIRST, Position.ofHalves(3), Position.SECOND);
  }

  @Test
  void faultsAreNamedByTheirFields() {
    Map<String, String> typed = new HashMap<>();
    typed.put("instrument", "viola");
    typed.put("level", "hero");
    typed.put("size", "3/4");
    typed.put("reach", "7");
    typed.put("shifts-NONE", "on");
    typed.put("shifts-REST", "on");

    ImmutableMap<String, String> errors =
        StudentForm.typed(typed, Optional.empty()).read().errors();

    assertThat(errors).containsOnlyKeys("level", "size", "reach", "shifts");
    assertThat(errors.get("size")).startsWith("No size '3/4' of the viola; choose 16.5");
    assertThat(errors.values()).allMatch(sentence -> sentence.matches("\\p{Lu}.*\\.|'.*\\."));
  }

  @Test
  void studentIsSaidInALine() {
    assertThat(
            StudentsPage.about(
                player(VIOLA + "preset: beginner$positions: 1-3$patterns: 1-2, 2-3$shifts: none")))
        .isEqualTo(
            "viola; beginner; 1st, 2nd, 3rd position; finger patterns 1-2, 2-3; shifts none yet");
  }
}
