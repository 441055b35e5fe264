package fingering.musicxml.reading;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.direction;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.violin;
import static fingering.musicxml.ScoreText.words;
import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Passage;
import fingering.tables.Instruments;
import org.junit.jupiter.api.Test;

/** Tunings that a part states: MusicXML 4.0, elements scordatura, accord and staff-tuning. */
class PartTuningTest {
  private static String accord(int string, String step, int octave) {
    return "<accord string=\"%d\"><tuning-step>%s</tuning-step><tuning-octave>%d</tuning-octave></accord>"
        .formatted(string, step, octave);
  }

  private static String sign(String... accords) {
    return direction("<scordatura>" + String.join("", accords) + "</scordatura>");
  }

  /** A staff with these tunings of its lines, the lowest first. */
  private static String staff(String... strings) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < strings.length; i++) {
      all.append(
          "<staff-tuning line=\"%d\"><tuning-step>%s</tuning-step><tuning-octave>%s</tuning-octave></staff-tuning>"
              .formatted(i + 1, strings[i].substring(0, 1), strings[i].substring(1)));
    }
    return "<attributes><staff-details><staff-lines>%d</staff-lines>%s</staff-details></attributes>"
        .formatted(strings.length, all);
  }

  private static Passage passage(Object... content) {
    Object[] all = new Object[content.length + 1];
    all[0] = START;
    System.arraycopy(content, 0, all, 1, content.length);
    return read(violin(measure("1", all))).passage(PassageRequest.WHOLE);
  }

  @Test
  void aScordaturaGivesARemarkWithItsTuning() {
    Passage passage = passage(sign(accord(4, "A", 3), accord(3, "E", 4)), note("A4", 16));
    assertThat(passage.instrument().tuning()).isEqualTo("standard");
    assertThat(passage.remarks())
        .contains(
            "the part asks for the strings E5 A4 E4 A3 in measure 1 and is planned for E5 A4 D4 G3, which is right if it is written as fingered, like most such parts; if it is written at sounding pitch, choose the tuning 'a-e-a-e'");
  }

  @Test
  void anUnknownTuningGivesARemarkWithAFile() {
    assertThat(passage(sign(accord(1, "C", 5)), note("A4", 16)).remarks())
        .anyMatch(
            remark ->
                remark.contains("strings C5 A4 D4 G3")
                    && remark.endsWith("choose the tuning of a file that lists them"));
  }

  @Test
  void aTuningWithOtherStringsGivesARemark() {
    assertThat(passage(staff("E2", "A2", "D3", "G3", "B3", "E4"), note("A4", 16)).remarks())
        .anyMatch(
            remark ->
                remark.startsWith(
                    "the part asks for the strings E4 B3 G3 D3 A2 E2 in measure 1, which is no tuning of the violin"));
  }

  @Test
  void aStringOfATuningThatCannotBeReadGivesARemark() {
    assertThat(passage(sign(accord(4, "H", 3)), note("A4", 16)).remarks())
        .contains("a tuning is not readable and is ignored: measure 1, beat 1");
  }

  @Test
  void theTuningOfAStaffGivesTheSameRemark() {
    assertThat(passage(staff("A3", "E4", "A4", "E5"), note("A4", 16)).remarks())
        .anyMatch(remark -> remark.endsWith("choose the tuning 'a-e-a-e'"));
  }

  @Test
  void theUsualTuningGivesNoRemark() {
    assertThat(passage(staff("G3", "D4", "A4", "E5"), note("A4", 16)).remarks())
        .noneMatch(remark -> remark.contains("strings"));
    assertThat(passage(sign(accord(4, "G", 3)), note("A4", 16)).remarks())
        .noneMatch(remark -> remark.contains("strings"));
  }

  @Test
  void anAdditionalStringIsUsed() {
    Passage passage = passage(staff("C3", "G3", "D4", "A4", "E5"), note("D3", 16));
    assertThat(passage.instrument().tuning()).isEqualTo("five-string");
    assertThat(passage.remarks())
        .contains(
            "the part asks for the strings E5 A4 D4 G3 C3 in measure 1 and is planned for this tuning, 'five-string'; choose the tuning 'standard' to plan it for the usual strings")
        .noneMatch(remark -> remark.contains("in the usual tuning"));
  }

  @Test
  void theRequestedTuningOverridesThePart() {
    Instruments known = Instruments.standard();
    Passage passage =
        read(violin(measure("1", START, staff("C3", "G3", "D4", "A4", "E5"), note("A4", 16))))
            .passage(PassageRequest.WHOLE, one -> one.tuned(known.tuning(one, "standard")));
    assertThat(passage.instrument().tuning()).isEqualTo("standard");
    assertThat(passage.remarks())
        .anyMatch(remark -> remark.endsWith("choose the tuning 'five-string'"));
    Passage tuned =
        read(violin(
                measure("1", START, sign(accord(4, "A", 3), accord(3, "E", 4)), note("A4", 16))))
            .passage(PassageRequest.WHOLE, one -> one.tuned(known.tuning(one, "a-e-a-e")));
    assertThat(tuned.instrument().tuning()).isEqualTo("a-e-a-e");
    assertThat(tuned.remarks()).anyMatch(remark -> remark.contains("in the usual tuning"));
  }

  @Test
  void aRepeatedTuningGivesOneRemark() {
    Passage passage =
        passage(
            sign(accord(4, "A", 3)),
            note("A4", 8),
            words("come sopra"),
            sign(accord(4, "A", 3)),
            note("A4", 8));
    assertThat(passage.remarks().stream().filter(remark -> remark.contains("asks for the strings")))
        .hasSize(1);
  }
}
