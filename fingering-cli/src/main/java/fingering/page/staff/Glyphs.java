package fingering.page.staff;

import fingering.music.print.Clef;

/**
 * The shapes of notation, drawn by hand for this program from lines and curves, not taken from a
 * font. The lines of the staff are 8 apart, and each shape is drawn around its own origin.
 */
final class Glyphs {
  /** Pixels between two lines of the staff. */
  static final double SPACE = 8;

  /** Half the width of a notehead. */
  static final double HEAD = 4.8;

  private Glyphs() {}

  /** All shapes, for a {@code defs} element. */
  static String shapes() {
    return """
        <ellipse id="g-full" rx="4.9" ry="3.5" transform="rotate(-22)"/>
        <marker id="g-head" markerUnits="userSpaceOnUse" overflow="visible"><ellipse class="ink" rx="4.9" ry="3.5" transform="rotate(-22)"/></marker>
        <rect id="g-paper" class="paper" width="100%" height="100%"/>
        <g id="g-staff" class="staff" transform="scale(1.004,1)"><line x2="100%"/><line x2="100%" y1="8" y2="8"/><line x2="100%" y1="16" y2="16"/><line x2="100%" y1="24" y2="24"/><line x2="100%" y1="32" y2="32"/></g>
        <path id="g-half" fill-rule="evenodd" transform="rotate(-22)" d="M-5 0A5 3.6 0 1 1 5 0A5 3.6 0 1 1 -5 0ZM-4.1 .3A4.1 1.9 0 1 0 4.1 -.3A4.1 1.9 0 1 0 -4.1 .3Z"/>
        <path id="g-whole" fill-rule="evenodd" d="M-6.4 0A6.4 3.8 0 1 1 6.4 0A6.4 3.8 0 1 1 -6.4 0ZM-2.8 -1.6A2.1 3.3 -32 1 0 2.8 1.6A2.1 3.3 -32 1 0 -2.8 -1.6Z"/>
        <path id="g-breve" fill-rule="evenodd" d="M-7 -5h1.2v1.6h11.6v-1.6h1.2v10h-1.2v-1.6h-11.6v1.6h-1.2ZM-5.8 -1.2v2.4h11.6v-2.4Z"/>
        <path id="g-diamond" class="o" d="M-4.6 0L0 -4L4.6 0L0 4Z"/>
        <path id="g-sharp" class="o" d="M-1.6 -10V11M1.6 -11V10M-3.7 -2.6L3.7 -4.9M-3.7 4.9L3.7 2.6" stroke-width="1.2"/>
        <path id="g-sharp-b" d="M-3.9 -1.6L3.9 -4V-6.2L-3.9 -3.8ZM-3.9 6L3.9 3.6V1.4L-3.9 3.8Z"/>
        <path id="g-flat" class="o" d="M-2.4 -13V5.4C2 3 4 .6 3 -1.6C2 -3.6 -.8 -2.6 -2.4 -.4" stroke-width="1.4"/>
        <path id="g-natural" class="o" d="M-2.3 -11V4.8L2.3 2.9M2.3 11V-4.8L-2.3 -2.9" stroke-width="1.4"/>
        <path id="g-double" class="o" d="M-3 -3L3 3M-3 3L3 -3" stroke-width="2.2"/>
        <path id="g-r1" d="M-6 -8h12v4.2h-12Z"/>
        <path id="g-r2" d="M-6 -4.2h12V0h-12Z"/>
        <path id="g-r4" d="M-2.6 -12L3.4 -4.6C.8 -2.2 1 .6 4 4.8C0 3.4 -2 6.2 .8 10.4C-4.4 7.6 -4.6 2.2 -.6 2.4L-4 -2C-.4 -4.6 -.6 -7.6 -2.6 -12Z"/>
        <g id="g-r8"><circle cx="-2.4" cy="-4.6" r="2.3"/><path class="o" d="M-3.6 -3.4C0 -1.6 3 -3 4 -5.8L.2 8" stroke-width="1.3"/></g>
        <g id="g-r16"><circle cx="-2" cy="-4.6" r="2.2"/><circle cx="-4" cy="3.4" r="2.2"/><path class="o" d="M-3.2 -3.4C.4 -1.6 3.4 -3 4.4 -5.8L-1.4 15M-5.2 4.6C-2.6 6 0 5 1.6 3.6" stroke-width="1.3"/></g>
        <g id="g-r32"><circle cx="-1.4" cy="-12.6" r="2.1"/><circle cx="-3.2" cy="-4.6" r="2.1"/><circle cx="-5" cy="3.4" r="2.1"/><path class="o" d="M-2.6 -11.4C1 -9.6 3.8 -11 5 -13.8L-2.6 15M-4.4 -3.4C-1.6 -2 1 -3.2 2.4 -4.6M-6.2 4.6C-3.8 6 -1.2 5 .4 3.4" stroke-width="1.3"/></g>
        <path id="g-flag-u" d="M0 0C.6 5 7.6 7 6 16.6C6.4 11.4 2.6 9.6 0 8.6Z"/>
        <path id="g-flag-d" d="M0 0C.6 -5 7.6 -7 6 -16.6C6.4 -11.4 2.6 -9.6 0 -8.6Z"/>
        <path id="g-stroke" d="M-4.6 2.6L4.6 -.4V-2.8L-4.6 .2Z"/>
        <path id="g-accent" class="o" d="M-4.5 -2.8L4.5 0L-4.5 2.8" stroke-width="1.2"/>
        <path id="g-marcato" class="o" d="M-3 3.4L0 -3.4L3 3.4" stroke-width="1.3"/>
        <path id="g-tenuto" class="o" d="M-4.5 0H4.5" stroke-width="1.5"/>
        <circle id="g-staccato" r="1.6"/>
        <g id="g-fermata"><path class="o" d="M-7 2A7 7 0 0 1 7 2" stroke-width="1.5"/><circle cy=".6" r="1.5"/></g>
        <circle id="g-ring" class="o" r="2.7" stroke-width="1.1"/>
        <path id="g-plus" class="o" d="M-3.2 0H3.2M0 -3.2V3.2" stroke-width="1.3"/>
        <path id="g-up-bow" class="o" d="M-3 -4L0 4L3 -4" stroke-width="1.2"/>
        <path id="g-down-bow" class="o" d="M-3.4 4V-3.2H3.4V4" stroke-width="1.3"/>
        <path id="g-shift-u" d="M0 -4.6L3.6 .2H1V4.6H-1V.2H-3.6Z"/>
        <path id="g-shift-d" d="M0 4.6L3.6 -.2H1V-4.6H-1V-.2H-3.6Z"/>
        <g id="g-clef-G"><path class="o" d="M-.4 4.4C-4 3.6 -4.4 -1.6 -.6 -3.4C3.6 -5 7 -1.6 6.6 2.2C6.2 6.6 1.4 8.6 -2.4 7.6C-8 6 -9.8 -.4 -6.8 -5.6C-4.6 -9.4 3.2 -14 4.2 -20C5 -25 3 -28.4 1.4 -28.4C-1.8 -28 -2.8 -22 -2 -17.6L2.6 10.6C3.4 15.6 .4 18.8 -2.6 18.2" stroke-width="1.9"/><circle cx="-3" cy="15.6" r="2.6"/></g>
        <g id="g-clef-F"><circle cx="-5.6" cy=".6" r="2.9"/><path d="M-8.4 .2C-8.6 -5.4 -4.4 -8.4 .2 -8.2C5.8 -8 8.4 -3.8 8 1.8C7.4 10 .6 15.4 -7.6 18.6C-.4 14 4 9 4.2 1.6C4.4 -3.8 3 -6.6 -.4 -6.6C-4.4 -6.6 -6.8 -3.6 -6.4 .4Z"/><circle cx="11.4" cy="-4" r="1.6"/><circle cx="11.4" cy="4" r="1.6"/></g>
        <g id="g-clef-C"><path d="M-8.6 -16h3.4v32h-3.4ZM-3.6 -16h1.3v32h-1.3Z"/><path class="o" d="M-2.4 0C.6 -.6 1.4 -2.8 1.8 -5.2C2.4 -1.8 7.8 -1.8 7.8 -8.2C7.8 -13.4 4.8 -15.4 2 -15.2C-.2 -15 -.8 -12.8 .2 -11.6M-2.4 0C.6 .6 1.4 2.8 1.8 5.2C2.4 1.8 7.8 1.8 7.8 8.2C7.8 13.4 4.8 15.4 2 15.2C-.2 15 -.8 12.8 .2 11.6" stroke-width="2"/></g>
        """
        .replaceAll("\n\\s*", "");
  }

  /** The shape of a clef. */
  static String clef(Clef clef) {
    return "g-clef-" + clef.sign();
  }
}
