package tankyard.engine.report.map;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import tankyard.engine.report.doc.Results;
import tankyard.engine.units.UnitSystem;

/** The map of a lease as a picture. */
public final class LeaseMap {
  /** Dots of the PNG for each point of the page: 3,000 by 2,120 in all, letter size at 270 dpi. */
  private static final int DOTS = 2;

  private static final String SVG = "http://www.w3.org/2000/svg";

  private final Page page;
  private final String title;

  private LeaseMap(Page page, String title) {
    this.page = page;
    this.title = title;
  }

  /**
   * A map, drawn anew each time it is asked for.
   *
   * @param dark light on dark, for a screen; otherwise dark on white, for paper
   */
  public static LeaseMap of(Results results, UnitSystem units, boolean dark) {
    return new LeaseMap(
        new Page(results, units, dark ? Palette.DARK : Palette.LIGHT),
        "Map of " + results.lease().name());
  }

  /** The picture as a file's bytes. */
  public byte[] png() {
    BufferedImage image =
        new BufferedImage(Page.WIDE * DOTS, Page.HIGH * DOTS, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.scale(DOTS, DOTS);
    page.paint(g);
    g.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", bytes);
    } catch (IOException e) {
      throw new IllegalStateException("A picture in memory can always be written", e);
    }
    return bytes.toByteArray();
  }

  /** The picture as SVG text. */
  public String svg() {
    try {
      SVGGraphics2D g = new SVGGraphics2D(document());
      page.paint(g);
      Element root = g.getRoot();
      root.setAttributeNS(null, "width", String.valueOf(Page.WIDE));
      root.setAttributeNS(null, "height", String.valueOf(Page.HIGH));
      root.setAttributeNS(null, "viewBox", "0 0 " + Page.WIDE + " " + Page.HIGH);
      Element name = root.getOwnerDocument().createElementNS(SVG, "title");
      name.setTextContent(title);
      root.insertBefore(name, root.getFirstChild());
      StringWriter text = new StringWriter();
      g.stream(root, text, true, false);
      return text.toString();
    } catch (SVGGraphics2DIOException | ParserConfigurationException e) {
      throw new IllegalStateException("A picture in memory can always be written", e);
    }
  }

  private static Document document() throws ParserConfigurationException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().getDOMImplementation().createDocument(SVG, "svg", null);
  }
}
