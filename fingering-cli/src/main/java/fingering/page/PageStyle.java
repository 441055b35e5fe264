package fingering.page;

import fingering.page.staff.StaffStyle;

/** The style sheet of all pages: light and dark, narrow and wide, screen and paper. */
final class PageStyle {
  private PageStyle() {}

  static String sheet() {
    return """
        :root{--paper:#fff;--ink:#14171a;--line:#6b7178;--faint:#d5d9dd;--mark:#ffe9a8;--link:#0b4f9c;--wood:#f3ead9;--a:#1b5e8c;--b:#b0480f;--c:#4b7a1e}
        @media (prefers-color-scheme:dark){:root{--paper:#15181b;--ink:#eceff1;--line:#9aa2aa;--faint:#3a4148;--mark:#5a4a10;--link:#8ec5ff;--wood:#2b2721;--a:#7cc0ee;--b:#f2a272;--c:#a6d37c}}
        *{box-sizing:border-box}
        html{-webkit-text-size-adjust:100%}
        body{margin:0 auto;padding:12px 16px;max-width:1240px;background:var(--paper);color:var(--ink);font:16px/1.5 sans-serif}
        h1{font-size:1.5em;line-height:1.25;margin:.2em 0}
        h2{font-size:1.2em;margin:1.4em 0 .4em;border-bottom:1px solid var(--line)}
        h3{font-size:1em;margin:1em 0 .2em}
        h4{font-size:.95em;font-weight:normal;font-style:italic;margin:.5em 0 .1em}
        p{margin:.3em 0;max-width:46em}
        ul{margin:.3em 0;padding-left:1.3em;max-width:48em}
        nav ul{padding:0;max-width:none;display:flex;flex-wrap:wrap;gap:.2em 1.2em;list-style:none}
        nav a{display:inline-block;padding:.2em 0}
        a{color:var(--link)}
        a:focus-visible,summary:focus-visible{outline:3px solid var(--link);outline-offset:2px}
        .skip{position:absolute;left:-999em}
        .skip:focus{position:static}
        .care{border:2px solid var(--ink);border-radius:4px;padding:.4em .7em}
        .defs{position:absolute}
        .strip{display:flex;flex-wrap:wrap;row-gap:20px;margin:1em 0;overflow:hidden}
        .piece{position:relative;scroll-margin:3em}
        .piece:target{outline:2px dashed var(--link);outline-offset:-2px}
        .piece svg{display:block;overflow:visible;fill:var(--ink)}
        .piece,.graph{break-inside:avoid}
        .panels{display:flex;flex-wrap:wrap;gap:14px 20px}
        .graph{display:block;max-width:100%%;height:auto;flex:none}
        .graph text{font:10px sans-serif;fill:var(--ink)}
        .graph .head{font:bold 12px sans-serif}
        .graph .axis{text-anchor:end}
        .graph .number{text-anchor:middle}
        .graph .times{font-size:9px;text-anchor:middle}
        .graph .on{fill:var(--paper)}
        .grid,.hand{shape-rendering:crispEdges}
        .grid{stroke:var(--faint);stroke-width:1;fill:none}
        .hand{stroke:var(--ink);stroke-width:2;fill:none}
        .shade{fill:url(#hatch)}
        .hatch{stroke:var(--line);stroke-width:1.2}
        .cross{stroke:var(--ink);stroke-width:1;fill:none}
        .string1{fill:var(--ink)}
        .string2{fill:var(--paper);stroke:var(--ink);stroke-width:1}
        .string3{fill:var(--line)}
        .string4{fill:url(#hatch);stroke:var(--ink);stroke-width:1}
        .plan0{fill:var(--a)}
        .plan1{fill:url(#hatch);stroke:var(--b);stroke-width:1.2}
        .plan2{fill:none;stroke:var(--c);stroke-width:1.6}
        .wood{fill:var(--wood);stroke:var(--line)}
        .nut{stroke:var(--ink);stroke-width:4}
        .gut{stroke:var(--line);stroke-width:1.2}
        .place{fill:var(--ink)}
        .open{fill:none;stroke:var(--ink);stroke-width:1.4}
        .graph use{fill:var(--ink)}
        table{border-collapse:collapse;margin:.8em 0;max-width:100%%}
        caption{text-align:left;font-weight:bold;padding:.2em 0}
        th,td{border-bottom:1px solid var(--faint);padding:.25em .6em .25em 0;text-align:left;vertical-align:top;overflow-wrap:anywhere}
        thead th{border-bottom:1px solid var(--ink)}
        tbody th{font-weight:normal}
        tfoot th,tfoot td{font-weight:bold}
        .asked td{overflow-wrap:normal}
        .n{min-width:5.5em}
        .cost0,.cost1,.cost2{display:block;height:7px;margin-top:1px}
        .cost0{background:var(--a)}
        .cost1{background:repeating-linear-gradient(135deg,var(--b) 0 1.5px,transparent 1.5px 4px);border:1px solid var(--b)}
        .cost2{border:2px solid var(--c)}
        .tables{display:flex;flex-wrap:wrap;gap:0 4em}
        .circles{columns:22em;column-gap:2.5em;max-width:none}
        .circles li{break-inside:avoid}
        .days td{text-align:right}
        .days tbody th{white-space:nowrap}
        .days td[colspan]{text-align:left}
        .days thead th:not(:first-child){text-align:right}
        .progress{margin:.5em 0;max-width:520px;break-inside:avoid}
        .progress svg{display:block;width:100%%;height:auto}
        .progress [fill="#111"],.progress svg{fill:var(--ink)}
        .progress [fill="#fff"]{fill:var(--paper)}
        .progress [stroke="#111"]{stroke:var(--ink)}
        .progress [stroke="#ccc"]{stroke:var(--faint)}
        .progress [fill="#0b5394"]{fill:var(--a)}
        .progress [stroke="#0b5394"]{stroke:var(--a)}
        dt{font-weight:bold}
        dd{margin:0 0 .4em 1em}
        @media (max-width:520px){body{padding:10px 12px;font-size:15px}.days{font-size:.85em}th,td{padding-right:.4em}.n{min-width:3.6em}.advice thead{position:absolute;left:-999em}.advice tr{display:block;padding:.4em 0;border-bottom:1px solid var(--faint)}.advice th,.advice td{display:block;border:0;padding:0}.advice td::before{font-style:italic}.advice td:nth-of-type(1)::before{content:"Write: "}.advice td:nth-of-type(2)::before{content:"Move: "}.advice td:nth-of-type(3)::before{content:"Tune: "}.advice th{font-weight:bold}}
        @page{margin:14mm 13mm}
        @media print{:root{color-scheme:light;--paper:#fff;--ink:#000;--line:#555;--faint:#bbb;--mark:#fff;--link:#000;--wood:#fff;--a:#000;--b:#000;--c:#000}*{print-color-adjust:exact;-webkit-print-color-adjust:exact}body{padding:0;max-width:none;font-size:10.5pt;line-height:1.35}.strip{zoom:.84}.panels{gap:10px 16px}nav,.skip,details{display:none}.tables{font-size:.88em;gap:0 1.6em}.tables table{break-inside:avoid}h2,h3,h4,caption,.note{break-after:avoid}.note{break-inside:avoid}tr,thead{break-inside:avoid}thead{break-after:avoid}tbody tr:first-child,tbody tr:last-child,tfoot{break-before:avoid}th,td{padding-top:.15em;padding-bottom:.15em}a{text-decoration:none;color:inherit}}
        """
            .replace("%%", "%")
        + StaffStyle.sheet();
  }
}
