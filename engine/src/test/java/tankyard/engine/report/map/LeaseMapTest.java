package tankyard.engine.report.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import tankyard.engine.lease.Service;
import tankyard.engine.report.Examples;
import tankyard.engine.report.doc.Results;
import tankyard.engine.units.UnitSystem;

class LeaseMapTest {
  private static BufferedImage png(Results results, boolean dark) throws Exception {
    byte[] bytes = LeaseMap.of(results, UnitSystem.FIELD, dark).png();
    return ImageIO.read(new ByteArrayInputStream(bytes));
  }

  private static Map<Integer, Integer> colours(BufferedImage image) {
    Map<Integer, Integer> counts = new HashMap<>();
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        counts.merge(image.getRGB(x, y) & 0xffffff, 1, Integer::sum);
      }
    }
    return counts;
  }

  @Test
  void thePictureShowsEachServiceThatIsDrawnInItsColour() throws Exception {
    Map<Integer, Integer> counts = colours(png(Examples.of("p1-osage-bend"), false));

    for (Service drawn :
        List.of(Service.FLOW_LINE, Service.OIL_LEG, Service.WATER_LEG, Service.OVERFLOW)) {
      int colour = Palette.LIGHT.line(drawn).getRGB() & 0xffffff;
      assertThat(counts.getOrDefault(colour, 0)).as(drawn.words()).isGreaterThan(100);
    }
    int injection = Palette.LIGHT.line(Service.INJECTION).getRGB() & 0xffffff;
    assertThat(counts).doesNotContainKey(injection);
  }

  @Test
  void theDarkPictureIsDarkAndTheLightOneLight() throws Exception {
    Results results = Examples.of("p2-sandstone-knob");

    assertThat(lightness(png(results, true))).isLessThan(60);
    assertThat(lightness(png(results, false))).isGreaterThan(200);
  }

  private static double lightness(BufferedImage image) {
    long sum = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        sum += image.getRGB(x, y) >> 8 & 0xff;
      }
    }
    return sum / (double) image.getWidth() / image.getHeight();
  }

  @Test
  void theSvgIsWellFormedAndNamesEveryWell() throws Exception {
    for (Results results : Examples.all()) {
      String svg = LeaseMap.of(results, UnitSystem.FIELD, false).svg();
      Document document = parse(svg);

      assertThat(document.getDocumentElement().getLocalName()).isEqualTo("svg");
      assertThat(document.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 1500 1060");
      String words = document.getDocumentElement().getTextContent();
      results.lease().wells().forEach(w -> assertThat(words).contains(w.name()));
      assertThat(words).contains("Legend");
    }
  }

  private static Document parse(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    // The picture names the SVG document type, which need not be fetched to be well formed.
    factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
  }

  @Test
  void theSameLeaseGivesTheSamePicture() throws Exception {
    Results results = Examples.of("p3-coyote-creek");

    assertThat(LeaseMap.of(results, UnitSystem.FIELD, false).svg())
        .isEqualTo(LeaseMap.of(results, UnitSystem.FIELD, false).svg());
  }

  @Test
  void noLabelLiesOnAnother() throws Exception {
    int labels = 0;
    for (Results results : Examples.all()) {
      Page page = new Page(results, UnitSystem.FIELD, Palette.LIGHT);
      page.paint(new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics());
      for (Sheet sheet : page.sheets()) {
        List<Labels.Placed> placed = sheet.labels().placed();
        labels += placed.size();
        for (int i = 0; i < placed.size(); i++) {
          for (int k = i + 1; k < placed.size(); k++) {
            assertThat(placed.get(i).box().intersects(placed.get(k).box()))
                .as(placed.get(i).text() + " on " + placed.get(k).text())
                .isFalse();
          }
        }
      }
    }
    assertThat(labels).isGreaterThan(100);
  }
}
