package fingering.page;

/** What the page of a check adds to the style sheet. */
final class CheckStyle {
  private CheckStyle() {}

  static String sheet() {
    return PageStyle.sheet()
        + """
        h4{font-size:1em;margin:.8em 0 .2em}
        section section{margin-left:0}
        .found{margin:.3em 0}
        .found summary{padding:.15em 0}
        .found ul{max-width:60em}
        .found li{margin:.25em 0}
        .where{font-weight:bold}
        .way{font-style:italic}
        .count{text-align:right}
        .file{overflow-wrap:anywhere}
        @media (max-width:520px){.count{padding-right:.2em}}
        @media print{.found{display:block}.found summary{list-style:none}h4{break-after:avoid}}
        """;
  }
}
