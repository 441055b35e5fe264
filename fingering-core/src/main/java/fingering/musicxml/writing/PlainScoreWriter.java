package fingering.musicxml.writing;

import com.google.common.collect.ImmutableList;
import com.google.common.math.IntMath;
import fingering.music.BeatUnit;
import fingering.music.Tempo;
import fingering.tables.Pitch;
import jakarta.xml.bind.JAXBException;
import jakarta.xml.bind.Marshaller;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.AboveBelow;
import org.audiveris.proxymusic.Accidental;
import org.audiveris.proxymusic.AccidentalValue;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Beam;
import org.audiveris.proxymusic.BeamValue;
import org.audiveris.proxymusic.Clef;
import org.audiveris.proxymusic.ClefSign;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.Empty;
import org.audiveris.proxymusic.EmptyPlacement;
import org.audiveris.proxymusic.Key;
import org.audiveris.proxymusic.Metronome;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.NoteType;
import org.audiveris.proxymusic.ObjectFactory;
import org.audiveris.proxymusic.PartList;
import org.audiveris.proxymusic.PartName;
import org.audiveris.proxymusic.PerMinute;
import org.audiveris.proxymusic.Rest;
import org.audiveris.proxymusic.ScorePart;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.Slur;
import org.audiveris.proxymusic.Sound;
import org.audiveris.proxymusic.StartStopContinue;
import org.audiveris.proxymusic.Step;
import org.audiveris.proxymusic.Time;
import org.audiveris.proxymusic.Transpose;
import org.audiveris.proxymusic.Work;
import org.audiveris.proxymusic.util.Marshalling;

/** Writes simple music as a score in MusicXML, without fingers or other marks. */
public final class PlainScoreWriter {
  private static final String VERSION = "4.0";
  private static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
  private static final String PART_ID = "P1";
  private static final String VOICE = "1";

  /** Decimals of playback tempi. */
  private static final int DECIMALS = 3;

  private static final ObjectFactory FACTORY = new ObjectFactory();

  private final PlainScore score;
  private final int divisions;

  private PlainScoreWriter(PlainScore score) {
    this.score = score;
    divisions =
        score.measures().stream()
            .flatMap(measure -> measure.notes().stream())
            .map(note -> note.value().quarters().getDenominator().intValueExact())
            .reduce(1, (a, b) -> a / IntMath.gcd(a, b) * b);
  }

  /** Returns the text of the score, for a file in UTF-8. Equal scores have equal texts. */
  public static String text(PlainScore score) {
    return new PlainScoreWriter(score).write();
  }

  private String write() {
    ScorePart listed = new ScorePart();
    listed.setId(PART_ID);
    PartName name = new PartName();
    name.setValue(score.part());
    listed.setPartName(name);
    PartList list = new PartList();
    list.getPartGroupOrScorePart().add(listed);
    ScorePartwise.Part part = new ScorePartwise.Part();
    part.setId(listed);
    for (int i = 0; i < score.measures().size(); i++) {
      part.getMeasure().add(measure(i));
    }
    ScorePartwise root = new ScorePartwise();
    root.setVersion(VERSION);
    if (!score.title().isEmpty()) {
      Work work = new Work();
      work.setWorkTitle(score.title());
      root.setWork(work);
    }
    root.setPartList(list);
    root.getPart().add(part);
    return DECLARATION + marshalled(root);
  }

  private static String marshalled(ScorePartwise root) {
    try {
      Marshaller marshaller = Marshalling.getContext(ScorePartwise.class).createMarshaller();
      marshaller.setProperty(Marshaller.JAXB_FORMATTED_OUTPUT, true);
      marshaller.setProperty(Marshaller.JAXB_FRAGMENT, true);
      StringWriter text = new StringWriter();
      marshaller.marshal(root, text);
      return text.toString().strip() + "\n";
    } catch (JAXBException e) {
      throw new IllegalStateException("cannot write the MusicXML of a plain score", e);
    }
  }

  private ScorePartwise.Part.Measure measure(int index) {
    PlainScore.Measure plain = score.measures().get(index);
    ScorePartwise.Part.Measure measure = new ScorePartwise.Part.Measure();
    measure.setNumber(Integer.toString(index + 1));
    List<Object> content = measure.getNoteOrBackupOrForward();
    Attributes attributes = index == 0 ? opening() : new Attributes();
    plain.clef().map(PlainScoreWriter::clef).ifPresent(attributes.getClef()::add);
    if (index == 0 && score.octaves() != 0) {
      attributes.getTranspose().add(transpose());
    }
    if (index == 0 || plain.clef().isPresent()) {
      content.add(attributes);
    }
    if (index == 0) {
      score.tempo().map(PlainScoreWriter::tempo).ifPresent(content::add);
    }
    PlainAccidentals accidentals = new PlainAccidentals(score.fifths());
    ImmutableList<Optional<BeamValue>> beams =
        PlainBeams.of(plain.notes(), score.beats(), score.beatType());
    for (int i = 0; i < plain.notes().size(); i++) {
      add(content, plain.notes().get(i), beams.get(i), accidentals);
    }
    return measure;
  }

  private Attributes opening() {
    Attributes attributes = new Attributes();
    attributes.setDivisions(BigDecimal.valueOf(divisions));
    Key key = new Key();
    key.setFifths(BigInteger.valueOf(score.fifths()));
    attributes.getKey().add(key);
    Time time = new Time();
    time.getTimeSignature().add(FACTORY.createTimeBeats(Integer.toString(score.beats())));
    time.getTimeSignature().add(FACTORY.createTimeBeatType(Integer.toString(score.beatType())));
    attributes.getTime().add(time);
    return attributes;
  }

  private static Clef clef(PlainClef plain) {
    Clef clef = new Clef();
    clef.setSign(ClefSign.fromValue(plain.sign()));
    clef.setLine(BigInteger.valueOf(plain.line()));
    return clef;
  }

  private Transpose transpose() {
    Transpose transpose = new Transpose();
    transpose.setChromatic(BigDecimal.ZERO);
    transpose.setOctaveChange(BigInteger.valueOf(score.octaves()));
    return transpose;
  }

  private static Direction tempo(Tempo tempo) {
    Metronome metronome = new Metronome();
    metronome.setBeatUnit(tempo.unit().name());
    for (int dot = 0; dot < tempo.unit().dots(); dot++) {
      metronome.getBeatUnitDot().add(new Empty());
    }
    PerMinute perMinute = new PerMinute();
    perMinute.setValue(tempo.perMinute().toPlainString());
    metronome.setPerMinute(perMinute);
    DirectionType type = new DirectionType();
    type.setMetronome(metronome);
    Sound sound = new Sound();
    BigDecimal quarters = tempo.quartersPerMinute().bigDecimalValue(DECIMALS, RoundingMode.HALF_UP);
    sound.setTempo(new BigDecimal(quarters.stripTrailingZeros().toPlainString()));
    Direction direction = new Direction();
    direction.setPlacement(AboveBelow.ABOVE);
    direction.getDirectionType().add(type);
    direction.setSound(sound);
    return direction;
  }

  private void add(
      List<Object> content,
      PlainNote plain,
      Optional<BeamValue> beam,
      PlainAccidentals accidentals) {
    if (plain.pitches().isEmpty()) {
      Note rest = timed(plain.value());
      rest.setRest(new Rest());
      content.add(rest);
      return;
    }
    for (int i = 0; i < plain.pitches().size(); i++) {
      Pitch pitch = plain.pitches().get(i);
      Note note = timed(plain.value());
      note.setPitch(pitch(pitch));
      accidentals.next(pitch).map(PlainScoreWriter::accidental).ifPresent(note::setAccidental);
      if (i > 0) {
        note.setChord(new Empty());
      } else {
        beam.map(PlainScoreWriter::beam).ifPresent(note.getBeam()::add);
        slurs(plain, note);
      }
      content.add(note);
    }
  }

  private Note timed(BeatUnit value) {
    Note note = new Note();
    BigFraction duration = value.quarters().multiply(divisions);
    note.setDuration(BigDecimal.valueOf(duration.longValue()));
    note.setVoice(VOICE);
    NoteType type = new NoteType();
    type.setValue(value.name());
    note.setType(type);
    for (int dot = 0; dot < value.dots(); dot++) {
      note.getDot().add(new EmptyPlacement());
    }
    return note;
  }

  private static org.audiveris.proxymusic.Pitch pitch(Pitch plain) {
    org.audiveris.proxymusic.Pitch pitch = new org.audiveris.proxymusic.Pitch();
    pitch.setStep(Step.valueOf(plain.letter().name()));
    if (plain.alter() != 0) {
      pitch.setAlter(BigDecimal.valueOf(plain.alter()));
    }
    pitch.setOctave(plain.octave());
    return pitch;
  }

  private static Accidental accidental(AccidentalValue value) {
    Accidental accidental = new Accidental();
    accidental.setValue(value);
    return accidental;
  }

  private static Beam beam(BeamValue value) {
    Beam beam = new Beam();
    beam.setNumber(1);
    beam.setValue(value);
    return beam;
  }

  private static void slurs(PlainNote plain, Note note) {
    if (!plain.slurEnds() && !plain.slurBegins()) {
      return;
    }
    Notations notations = new Notations();
    if (plain.slurEnds()) {
      notations.getTiedOrSlurOrTuplet().add(slur(StartStopContinue.STOP));
    }
    if (plain.slurBegins()) {
      notations.getTiedOrSlurOrTuplet().add(slur(StartStopContinue.START));
    }
    note.getNotations().add(notations);
  }

  private static Slur slur(StartStopContinue type) {
    Slur slur = new Slur();
    slur.setNumber(1);
    slur.setType(type);
    return slur;
  }
}
