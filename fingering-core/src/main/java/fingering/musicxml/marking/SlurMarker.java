package fingering.musicxml.marking;

import com.google.common.collect.ImmutableListMultimap;
import fingering.music.ChangedSlurs;
import fingering.music.ChangedSlurs.Slur;
import fingering.music.NoteAddress;
import fingering.musicxml.marking.NoteElement.SlurElement;
import fingering.musicxml.xml.TextEdits;
import fingering.musicxml.xml.XmlCursor;
import fingering.musicxml.xml.XmlElement;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Writes changed slurs into the text of a MusicXML score. */
final class SlurMarker {
  private final String xml;
  private final ChangedSlurs slurs;
  private final ImmutableListMultimap<NoteAddress, String> added;
  private final TextEdits edits = new TextEdits();

  /** The slurs being removed, each with the voice of its first note, to find its middle. */
  private final List<Open> open = new ArrayList<>();

  private record Open(Slur slur, String voice) {}

  private SlurMarker(String xml, ChangedSlurs slurs) {
    this.xml = xml;
    this.slurs = slurs;
    ImmutableListMultimap.Builder<NoteAddress, String> elements = ImmutableListMultimap.builder();
    for (Slur slur : slurs.added()) {
      elements.put(slur.from(), element("start", slur));
      elements.put(slur.to(), element("stop", slur));
    }
    added = elements.build();
  }

  private static String element(String type, Slur slur) {
    return "<slur type=\"%s\" number=\"%d\"/>".formatted(type, slur.number());
  }

  /** Returns the text with the changed slurs. */
  static String mark(String xml, ChangedSlurs slurs) {
    return slurs.isEmpty() ? xml : new SlurMarker(xml, slurs).run();
  }

  private String run() {
    XmlCursor cursor = new XmlCursor(xml);
    ScoreMarker.requirePartwise(cursor.name());
    int[] part = {0};
    cursor.element(name -> name.equals("part") ? readPart(cursor, part[0]++) : cursor.skip());
    cursor.finishDocument();
    return edits.applyTo(xml);
  }

  private XmlElement readPart(XmlCursor cursor, int part) {
    int[] measure = {0};
    return cursor.element(
        name -> name.equals("measure") ? readMeasure(cursor, part, measure[0]++) : cursor.skip());
  }

  private XmlElement readMeasure(XmlCursor cursor, int part, int measure) {
    int[] note = {0};
    return cursor.element(
        name ->
            name.equals("note")
                ? readNote(cursor, new NoteAddress(part, measure, note[0]++))
                : cursor.skip());
  }

  private XmlElement readNote(XmlCursor cursor, NoteAddress address) {
    NoteElement note = new NoteElement(cursor);
    List<SlurElement> off = new ArrayList<>();
    remove(note, address, Slur::to, "stop", off);
    remove(note, address, Slur::from, "start", off);
    open.removeIf(slur -> slur.slur().to().compareTo(address) <= 0);
    for (SlurElement slur : note.slurs()) {
      if (slur.type().equals("continue") && continues(slur, note)) {
        off.add(slur);
      }
    }
    for (Slur slur : slurs.removed()) {
      if (slur.from().equals(address)) {
        open.add(new Open(slur, note.voice()));
      }
    }
    if (!off.isEmpty() || added.containsKey(address)) {
      new NoteMarker(xml, edits, note).slurs(off, added.get(address));
    }
    return note.note;
  }

  private void remove(
      NoteElement note,
      NoteAddress address,
      Function<Slur, NoteAddress> end,
      String type,
      List<SlurElement> off) {
    for (Slur slur : slurs.removed()) {
      if (end.apply(slur).equals(address)) {
        note.slurs().stream()
            .filter(found -> found.type().equals(type) && found.number() == slur.number())
            .filter(found -> !off.contains(found))
            .findFirst()
            .ifPresent(off::add);
      }
    }
  }

  private boolean continues(SlurElement slur, NoteElement note) {
    return open.stream()
        .anyMatch(
            removed ->
                removed.slur().number() == slur.number() && removed.voice().equals(note.voice()));
  }
}
