package fingering.musicxml.xml;

import com.ctc.wstx.stax.WstxInputFactory;
import javax.xml.stream.XMLInputFactory;
import org.codehaus.stax2.XMLInputFactory2;

/** Settings of XML parsers for files from unknown sources. */
public final class XmlParsers {
  private XmlParsers() {}

  /**
   * Returns a new factory of parsers that load nothing from outside the text, expand no entities,
   * and ignore namespaces.
   */
  public static XMLInputFactory factory() {
    WstxInputFactory factory = new WstxInputFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
    // Lazy parsing would report errors from accessors, as unchecked exceptions.
    factory.setProperty(XMLInputFactory2.P_LAZY_PARSING, false);
    return factory;
  }
}
