package fingering.musicxml.random;

import com.google.common.base.Splitter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * Random elements that are valid by the schema of MusicXML. The schema itself says what an element
 * may contain, so no element is forgotten.
 */
final class SchemaContent {
  private static final List<String> WORDS =
      List.of(
          "a", "dolce", "pizz.", "arco", "sul G", "III", "4", "rit.", "Allegro", "é–&amp;", "1");

  /** A value for each pattern of the schema. */
  private static final Map<String, String> PATTERNS =
      Map.ofEntries(
          Map.entry("#[\\dA-F]{6}([\\dA-F][\\dA-F])?", "#80FF0000"),
          Map.entry("[^,]+(, ?[^,]+)*", "Serif, sans"),
          Map.entry(
              "(acc|medRenFla|medRenNatura|medRenShar|kievanAccidental)(\\c+)", "accidentalSharp"),
          Map.entry("coda\\c*", "coda"),
          Map.entry("lyrics\\c+", "lyricsElision"),
          Map.entry("pict\\c+", "pictGong"),
          Map.entry("segno\\c*", "segno"),
          Map.entry("(wiggle\\c+)|(guitar\\c*VibratoStroke)", "wiggleTrill"),
          Map.entry("[1-9][0-9]*(, ?[1-9][0-9]*)*", "1,2"),
          Map.entry("[^:Z]*", "2026-11-30"),
          Map.entry("([ ]*)|([1-9][0-9]*(, ?[1-9][0-9]*)*)", "1"));

  private static final int MOST_DEEP = 6;

  private final Map<String, Element> named = new HashMap<>();
  private final Set<String> used = new HashSet<>();
  private final Set<String> without;
  private Random random = new Random(0);
  private int ids;

  /**
   * Reads the schema.
   *
   * @param without the names of elements that are left out
   */
  SchemaContent(Path folder, Set<String> without) throws IOException {
    this.without = without;
    try {
      Document schema =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(folder.resolve("musicxml.xsd").toFile());
      for (Element part : children(schema.getDocumentElement())) {
        named.put(kind(part) + " " + part.getAttribute("name"), part);
      }
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException(e);
    }
  }

  /** Goes on with these random numbers. */
  void with(Random next) {
    random = next;
  }

  /** The names of all elements made so far. */
  Set<String> used() {
    return used;
  }

  private static String kind(Element part) {
    return part.getTagName().replaceFirst("^xs:", "");
  }

  private static List<Element> children(Element parent) {
    List<Element> found = new ArrayList<>();
    for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element element && !kind(element).equals("annotation")) {
        found.add(element);
      }
    }
    return found;
  }

  /** An element of a named type. */
  String element(String name, String type) {
    return element(name, type, List.of(), 0);
  }

  private String element(String name, String type, List<Element> own, int depth) {
    used.add(name);
    StringBuilder attributes = new StringBuilder();
    StringBuilder content = new StringBuilder();
    Element complex = named.get("complexType " + type);
    if (!own.isEmpty()) {
      own.forEach(part -> complex(part, attributes, content, depth));
    } else if (complex != null) {
      children(complex).forEach(part -> complex(part, attributes, content, depth));
    } else {
      content.append(value(type));
    }
    return content.isEmpty()
        ? "<" + name + attributes + "/>"
        : "<" + name + attributes + ">" + content + "</" + name + ">";
  }

  private void complex(Element part, StringBuilder attributes, StringBuilder content, int depth) {
    switch (kind(part)) {
      case "attribute" -> attribute(part, attributes);
      case "attributeGroup" ->
          children(named.get("attributeGroup " + part.getAttribute("ref")))
              .forEach(each -> complex(each, attributes, content, depth));
      case "simpleContent", "complexContent" ->
          children(part).forEach(each -> complex(each, attributes, content, depth));
      case "extension" -> {
        Element base = named.get("complexType " + part.getAttribute("base"));
        if (base == null) {
          content.append(value(part.getAttribute("base")));
        } else {
          children(base).forEach(each -> complex(each, attributes, content, depth));
        }
        children(part).forEach(each -> complex(each, attributes, content, depth));
      }
      default -> content.append(particle(part, depth));
    }
  }

  private int times(Element part, int depth) {
    String most = part.getAttribute("maxOccurs");
    int least = part.getAttribute("minOccurs").isEmpty() ? 1 : number(part, "minOccurs");
    int more =
        most.isEmpty() ? 1 : most.equals("unbounded") ? least + 2 : number(part, "maxOccurs");
    boolean enough = depth > MOST_DEEP || random.nextInt(3) > 0;
    return enough ? least : least + random.nextInt(Math.min(more, least + 2) - least + 1);
  }

  private static int number(Element part, String name) {
    return Integer.parseInt(part.getAttribute(name));
  }

  private String particle(Element part, int depth) {
    StringBuilder content = new StringBuilder();
    for (int i = times(part, depth); i > 0; i--) {
      switch (kind(part)) {
        case "sequence" -> children(part).forEach(each -> content.append(particle(each, depth)));
        case "choice" -> {
          List<Element> all =
              children(part).stream()
                  .filter(each -> !without.contains(each.getAttribute("name")))
                  .toList();
          content.append(particle(all.get(random.nextInt(all.size())), depth));
        }
        case "group" ->
            children(named.get("group " + part.getAttribute("ref")))
                .forEach(each -> content.append(particle(each, depth)));
        case "element" ->
            content.append(
                without.contains(part.getAttribute("name"))
                    ? ""
                    : element(
                        part.getAttribute("name"),
                        part.getAttribute("type"),
                        children(part).stream().flatMap(type -> children(type).stream()).toList(),
                        depth + 1));
        default -> throw new IllegalStateException(kind(part));
      }
    }
    return content.toString();
  }

  private void attribute(Element part, StringBuilder attributes) {
    boolean required = part.getAttribute("use").equals("required");
    if (!required && random.nextInt(5) > 0) {
      return;
    }
    String ref = part.getAttribute("ref");
    String value =
        switch (ref) {
          case "" -> value(part.getAttribute("type"));
          case "xml:lang" -> "en";
          case "xml:space" -> "preserve";
          case "xlink:href" -> "other.xml";
          default -> "";
        };
    if (ref.isEmpty() || !value.isEmpty()) {
      attributes
          .append(' ')
          .append(ref.isEmpty() ? part.getAttribute("name") : ref)
          .append("=\"")
          .append(value)
          .append('"');
    }
  }

  private String value(String type) {
    return switch (type) {
      case "xs:string", "xs:token", "xs:NMTOKEN", "xs:anyURI" -> text(type);
      case "xs:ID" -> "x" + ids++;
      case "xs:IDREF" -> "P1-I1";
      case "xs:date" -> "2026-11-30";
      case "xs:decimal", "xs:integer" -> String.valueOf(random.nextInt(9) - 2);
      case "xs:nonNegativeInteger" -> String.valueOf(random.nextInt(5));
      case "xs:positiveInteger" -> String.valueOf(1 + random.nextInt(4));
      default -> restricted(type);
    };
  }

  private String text(String type) {
    return type.equals("xs:string") || type.equals("xs:token")
        ? WORDS.get(random.nextInt(WORDS.size()))
        : "some";
  }

  private String restricted(String type) {
    Element simple = named.get("simpleType " + type);
    if (simple == null) {
      throw new IllegalStateException("no type " + type);
    }
    Element rule = children(simple).get(0);
    if (kind(rule).equals("union")) {
      List<String> members =
          Splitter.on(' ').omitEmptyStrings().splitToList(rule.getAttribute("memberTypes"));
      return members.isEmpty()
          ? enumeration(children(children(rule).get(0)).get(0))
          : value(members.get(random.nextInt(members.size())));
    }
    List<Element> facets = children(rule);
    if (facets.stream().anyMatch(facet -> kind(facet).equals("enumeration"))) {
      return enumeration(rule);
    }
    double least = -2;
    double most = 9;
    for (Element facet : facets) {
      String value = facet.getAttribute("value");
      switch (kind(facet)) {
        case "pattern" -> {
          return PATTERNS.get(value);
        }
        case "minInclusive" -> least = Double.parseDouble(value);
        case "minExclusive" -> least = Double.parseDouble(value) + 1;
        case "maxInclusive" -> most = Double.parseDouble(value);
        default -> {}
      }
    }
    String base = rule.getAttribute("base");
    if (facets.stream().noneMatch(facet -> kind(facet).endsWith("clusive"))) {
      return value(base);
    }
    least = base.equals("xs:positiveInteger") ? Math.max(1, least) : least;
    least = base.equals("xs:nonNegativeInteger") ? Math.max(0, least) : least;
    return String.valueOf((int) least + random.nextInt((int) (Math.max(most, least) - least) + 1));
  }

  private String enumeration(Element rule) {
    List<Element> values =
        children(rule).stream().filter(each -> kind(each).equals("enumeration")).toList();
    return values.get(random.nextInt(values.size())).getAttribute("value");
  }
}
