package fingering.page;

/** The style sheet of the page of a check. */
final class CheckStyle {
  private CheckStyle() {}

  static String sheet() {
    return PageStyle.sheet()
        + """
        h1,h2{overflow-wrap:anywhere}
        h3{font-size:1.15em;margin:1.3em 0 .2em}
        h4{font-size:1em;margin:.8em 0 .1em}
        .counts th,.counts td{overflow-wrap:break-word}
        .counts tbody th{overflow-wrap:anywhere;min-width:5.6em}
        .found{margin:.3em 0}
        .found summary{padding:.15em 0}
        .found ul{max-width:60em}
        .found li{margin:.25em 0}
        .where{font-weight:bold}
        .fix{font-style:italic}
        .count{text-align:right}
        .file{overflow-wrap:anywhere}
        @media (max-width:520px){.counts{font-size:14px}}
        @media print{.found{display:block}.found summary{list-style:none}h4{break-after:avoid}}
        """;
  }
}
