package fingering.page.staff;

/** The style of letters and lines of the strip; the page around it sets the colours. */
public final class StaffStyle {
  /** Sizes of letters in pixels. */
  static final double WORDS = 11;

  static final double DYNAMICS = 13;
  static final double FINGER = 13;
  static final double STRING = 10.5;
  static final double LABEL = 10;

  private StaffStyle() {}

  /**
   * The style rules of the strip. They do not depend on enclosing elements, because shapes that are
   * reused are styled where they are defined.
   */
  public static String sheet() {
    return """
        .ink{fill:var(--ink)}
        .paper{fill:var(--paper)}
        .o{fill:none;stroke:var(--ink)}
        .staff{fill:none;stroke:var(--line);stroke-width:1}
        .heads{fill:none;stroke:none;marker:url(#g-head)}
        .bar{fill:none;stroke:var(--ink);stroke-width:1.3}
        .thick{fill:none;stroke:var(--ink);stroke-width:3.6}
        .stem{fill:none;stroke:var(--ink);stroke-width:1.2}
        .curve{fill:none;stroke:var(--ink);stroke-width:1.3;stroke-linecap:round}
        .bracket{fill:none;stroke:var(--ink);stroke-width:1}
        .differs{fill:var(--mark);stroke:var(--ink);stroke-width:1.1;stroke-linejoin:round}
        text{font-family:sans-serif;fill:var(--ink)}
        text.meter{font:bold 18px serif;text-anchor:middle}
        text.octave{font-size:9px;text-anchor:middle}
        text.number{font-size:10px}
        text.ending{font-size:10px}
        text.rehearsal{font-size:11px;font-weight:bold}
        text.words{font-size:11px;font-style:italic}
        text.dynamic{font:italic bold 13px serif}
        text.tuplet{font:italic 10px serif;text-anchor:middle}
        text.tr{font:italic bold 12px serif;text-anchor:middle}
        text.finger{font-size:13px;text-anchor:middle}
        text.changed{font-size:13px;font-weight:bold;text-anchor:middle}
        text.string{font-size:10.5px;text-anchor:middle}
        text.label{font-size:10px}
        text.key{font-size:11px;font-weight:bold;text-anchor:middle}
        """;
  }
}
