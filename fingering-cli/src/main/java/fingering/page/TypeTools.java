package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import fingering.page.live.TypeView.Choice;
import fingering.page.live.TypeView.Choices;
import fingering.page.live.TypeView.Example;
import fingering.page.live.TypeView.Group;
import fingering.page.live.TypeView.Start;
import fingering.page.live.TypeView.Tool;
import java.util.stream.Stream;

/** The instruments, menus, buttons and the legend of the page on which an excerpt is typed. */
final class TypeTools {
  private static final String MAJOR = "C,G,D,A,E,B,F#,C#,F,Bb,Eb,Ab,Db,Gb,Cb";
  private static final String MINOR = "Am,Em,Bm,F#m,C#m,G#m,D#m,A#m,Dm,Gm,Cm,Fm,Bbm,Ebm,Abm";
  private static final String METERS = "4/4,3/4,2/4,2/2,3/2,3/8,6/8,9/8,12/8,5/4,C,C|";
  private static final String DYNAMICS = "pp,p,mp,mf,f,ff,sf,fp";

  /** What the buttons do, as the script knows it. */
  private static final String ACCIDENTAL = "accidental";

  private static final String OCTAVE = "octave";
  private static final String LENGTH = "length";
  private static final String BEFORE = "before";
  private static final String AROUND = "around";
  private static final String INSERT = "insert";

  private TypeTools() {}

  static ImmutableList<Start> instruments() {
    return ImmutableList.of(
        new Start("violin", text("type.violin"), "treble", "G,2 D2 A2 e2 |"),
        new Start("viola", text("type.viola"), "alto", "C,2 G,2 D2 A2 |"),
        new Start("cello", text("type.cello"), "bass", "C,,2 G,,2 D,2 A,2 |"),
        new Start("bass", text("type.bass"), "bass", "E,,2 A,,2 D,2 G,2 |"));
  }

  static Choices choices() {
    return new Choices(
        ImmutableList.of(
            new Choice("treble", text("type.clef.treble")),
            new Choice("alto", text("type.clef.alto")),
            new Choice("tenor", text("type.clef.tenor")),
            new Choice("bass", text("type.clef.bass"))),
        Stream.concat(
                each(MAJOR).map(key -> new Choice(key, text("type.major", signs(key)))),
                each(MINOR)
                    .map(
                        key ->
                            new Choice(
                                key,
                                text("type.minor", signs(key.substring(0, key.length() - 1))))))
            .collect(ImmutableList.toImmutableList()),
        each(METERS)
            .map(
                meter ->
                    new Choice(
                        meter,
                        switch (meter) {
                          case "C" -> text("type.common");
                          case "C|" -> text("type.cut");
                          default -> meter;
                        }))
            .collect(ImmutableList.toImmutableList()),
        ImmutableList.of(
            new Choice("1/2", text("type.half")),
            new Choice("1/4", text("type.quarter")),
            new Choice("1/8", text("type.eighth")),
            new Choice("1/16", text("type.16th"))),
        ImmutableList.of(
            new Choice("1/2", text("type.half")),
            new Choice("3/8", text("type.dotted")),
            new Choice("1/4", text("type.quarter")),
            new Choice("1/8", text("type.eighth"))));
  }

  private static Stream<String> each(String list) {
    return Splitter.on(',').splitToStream(list);
  }

  /** The name of a key with signs as printed. */
  private static String signs(String key) {
    return key.replace('b', '\u266d').replace('#', '\u266f');
  }

  static ImmutableList<Group> tools() {
    return ImmutableList.of(
        new Group(
            text("type.group.note"),
            ImmutableList.of(
                new Tool("\u266f", text("type.sharp"), ACCIDENTAL, "^"),
                new Tool("\u266d", text("type.flat"), ACCIDENTAL, "_"),
                new Tool("\u266e", text("type.natural"), ACCIDENTAL, "="),
                new Tool("8\u2191", text("type.up"), OCTAVE, "1"),
                new Tool("8\u2193", text("type.down"), OCTAVE, "-1"),
                new Tool("\u00d72", text("type.longer"), LENGTH, "2"),
                new Tool("\u00f72", text("type.shorter"), LENGTH, "0.5"),
                new Tool("\u00d71\u00bd", text("type.dot"), LENGTH, "1.5"))),
        new Group(
            text("type.group.between"),
            ImmutableList.of(
                named(text("type.rest"), INSERT, "z"),
                named(text("type.triplet"), INSERT, "(3"),
                named(text("type.slur"), AROUND, "( )"),
                named(text("type.tie"), "after", "-"),
                new Tool("|", text("type.bar"), INSERT, " | "),
                new Tool("|:", text("type.begin"), INSERT, " |: "),
                new Tool(":|", text("type.repeat"), INSERT, " :| "),
                named(text("type.clef.change"), INSERT, "[K:clef=treble] "))),
        new Group(
            text("type.group.marks"),
            ImmutableList.of(
                new Tool("\u2293", text("type.downbow"), BEFORE, "v"),
                new Tool("V", text("type.upbow"), BEFORE, "u"),
                new Tool("\u00b7", text("type.staccato"), BEFORE, "."),
                new Tool(">", text("type.accent"), BEFORE, "L"),
                named(text("type.pizz"), BEFORE, "\"^pizz.\""),
                named(text("type.arco"), BEFORE, "\"^arco\""))),
        new Group(
            text("type.group.dynamics"),
            Stream.concat(
                    each(DYNAMICS)
                        .map(
                            sign ->
                                new Tool(
                                    sign,
                                    text("type.dynamic", sign, sign),
                                    BEFORE,
                                    "!" + sign + "!")),
                    Stream.of(
                        named(text("type.cresc"), BEFORE, "\"_cresc.\""),
                        named(text("type.dim"), BEFORE, "\"_dim.\""),
                        new Tool("<", text("type.hairpin.louder"), AROUND, "!<(! !<)!"),
                        new Tool(">", text("type.hairpin.softer"), AROUND, "!>(! !>)!")))
                .collect(ImmutableList.toImmutableList())));
  }

  /** A button with its name on it. */
  private static Tool named(String name, String act, String sign) {
    return new Tool(name.substring(0, name.indexOf(':')), name, act, sign);
  }

  static ImmutableList<Example> legend() {
    return ImmutableList.of(
        new Example("C D E F G A B c", text("type.how.letters")),
        new Example("C,, C, C c c'", text("type.how.octaves")),
        new Example("D D2 D3 D/ D/4", text("type.how.lengths")),
        new Example("^F _B =c", text("type.how.accidentals")),
        new Example("z z2 Z", text("type.how.rests")),
        new Example("DE F2", text("type.how.beams")),
        new Example("D>E (3DEF", text("type.how.rhythms")),
        new Example("(DEF) D2-D", text("type.how.slurs")),
        new Example("[DA]2 {c}d", text("type.how.chords")),
        new Example("| |: :| || |]", text("type.how.bars")),
        new Example("vD .E uF !p!G LA", text("type.how.marks")),
        new Example("!<(!DEF!<)! G", text("type.how.hairpins")),
        new Example("\"^pizz.\"D \"_cresc.\"E", text("type.how.words")),
        new Example("[M:3/4] [K:G] [K:clef=treble]", text("type.how.changes")));
  }
}
