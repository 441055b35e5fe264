package fingering.musicxml.random;

import java.util.List;

/**
 * A score in MusicXML.
 *
 * @param list the list of parts
 * @param measures what is in the measures of each part
 */
record WholeScore(String list, List<List<String>> measures) {
  String partwise() {
    StringBuilder all = new StringBuilder(head("score-partwise"));
    for (int p = 0; p < measures.size(); p++) {
      all.append("<part id=\"P").append(p + 1).append("\">\n");
      for (int m = 0; m < measures.get(p).size(); m++) {
        all.append(measure(m)).append(measures.get(p).get(m)).append("</measure>\n");
      }
      all.append("</part>\n");
    }
    return all.append("</score-partwise>\n").toString();
  }

  String timewise() {
    StringBuilder all = new StringBuilder(head("score-timewise"));
    for (int m = 0; m < measures.get(0).size(); m++) {
      all.append(measure(m)).append('\n');
      for (int p = 0; p < measures.size(); p++) {
        all.append("<part id=\"P").append(p + 1).append("\">\n");
        all.append(measures.get(p).get(m)).append("</part>\n");
      }
      all.append("</measure>\n");
    }
    return all.append("</score-timewise>\n").toString();
  }

  private static String measure(int index) {
    return "<measure number=\"" + (index + 1) + "\">\n";
  }

  private String head(String root) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<"
        + root
        + " version=\"4.0\" xmlns:xlink=\"http://www.w3.org/1999/xlink\">\n<work><work-title>Random</work-title></work>\n<part-list>\n"
        + list
        + "</part-list>\n";
  }
}
