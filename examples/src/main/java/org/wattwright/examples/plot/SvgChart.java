package org.wattwright.examples.plot;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.io.StringWriter;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * Draws a chart as one {@code <svg>} element that scales, and whose identifiers do not clash with
 * those of other drawings on the page.
 */
final class SvgChart {
  static final int WIDTH = 680;

  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final int DECIMALS = 2;
  private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]*");
  private static final Pattern REFERENCE = Pattern.compile("(url\\(\"?|^)#");

  private SvgChart() {}

  static String draw(JFreeChart chart, int height, String id) {
    return draw(graphics -> chart.draw(graphics, new Rectangle(WIDTH, height)), height, id);
  }

  /** A drawing of our own, in a field of the usual width. */
  static String draw(Consumer<Graphics2D> drawing, int height, String id) {
    if (!ID.matcher(id).matches()) {
      throw new IllegalArgumentException(
          "plot id must be lower-case letters, digits and hyphens, but was \"" + id + "\"");
    }
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(emptyDocument());
    context.setComment(null);
    context.setPrecision(DECIMALS);
    SVGGraphics2D graphics = new SVGGraphics2D(context, false);
    graphics.setSVGCanvasSize(new Dimension(WIDTH, height));
    graphics.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    drawing.accept(graphics);
    Element root = graphics.getRoot();
    root.removeAttribute("width");
    root.removeAttribute("height");
    root.setAttribute("viewBox", "0 0 " + WIDTH + " " + height);
    root.setAttribute("id", "plot");
    root.setAttribute("font-family", "sans-serif");
    // The chart library places text by widths without kerning.
    root.setAttribute("style", "font-kerning:none");
    prefixIds(root, id + "-");
    return text(root);
  }

  private static Document emptyDocument() {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(SVG, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("no XML parser in this Java", e);
    }
  }

  private static void prefixIds(Node node, String prefix) {
    NamedNodeMap attributes = node.getAttributes();
    for (int i = 0; attributes != null && i < attributes.getLength(); i++) {
      Attr attribute = (Attr) attributes.item(i);
      String value = attribute.getValue();
      attribute.setValue(
          attribute.getName().equals("id")
              ? prefix + value
              : REFERENCE.matcher(value).replaceAll("$1#" + prefix));
    }
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      prefixIds(child, prefix);
    }
  }

  private static String text(Element root) {
    try {
      Transformer transformer = TransformerFactory.newInstance().newTransformer();
      transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
      StringWriter out = new StringWriter();
      transformer.transform(new DOMSource(root), new StreamResult(out));
      return out.toString();
    } catch (TransformerException e) {
      throw new IllegalStateException("cannot write SVG", e);
    }
  }
}
