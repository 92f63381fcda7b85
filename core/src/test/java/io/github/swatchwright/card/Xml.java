package io.github.swatchwright.card;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads XML strictly. */
final class Xml {
  private Xml() {}

  /** The root of a document; an AssertionError when it isn't well-formed. */
  static Element parse(String text) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setNamespaceAware(true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new DefaultHandler());
      return builder.parse(new InputSource(new StringReader(text))).getDocumentElement();
    } catch (SAXException e) {
      throw new AssertionError("not well-formed: " + e.getMessage(), e);
    } catch (IOException | ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
  }
}
