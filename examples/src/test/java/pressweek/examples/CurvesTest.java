package pressweek.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class CurvesTest {
  @Test
  void linesDifferWithoutColour() throws Exception {
    Curves curves = new Curves("Gap", "percent");
    curves.add("low & slow", 1, 5);
    curves.add("low & slow", 10, 2);
    curves.add("high", 1, 9);
    curves.add("high", 10, 8);
    Document picture =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(curves.svg().getBytes(StandardCharsets.UTF_8)));
    NodeList lines = picture.getElementsByTagName("polyline");
    Set<String> dashes = new HashSet<>();
    for (int i = 0; i < lines.getLength(); i++) {
      Element line = (Element) lines.item(i);
      dashes.add(line.getAttribute("stroke-dasharray"));
      assertThat(line.getAttribute("stroke")).isEqualTo("#000");
    }
    assertThat(dashes).hasSize(2);
    assertThat(picture.getElementsByTagName("circle").getLength()).isEqualTo(3);
  }

  @Test
  void higherValuesAreDrawnHigherAndLaterOnesFurtherRight() {
    Curves curves = new Curves("Gap", "percent");
    curves.add("one", 1, 100);
    curves.add("one", 100, 0);
    assertThat(curves.svg()).contains("points=\"90.0,30.0 420.0,330.0\"");
  }

  @Test
  void theAxisHasRoundNumbers() {
    Curves curves = new Curves("Gap", "percent");
    curves.add("one", 1, 92.3);
    assertThat(curves.svg()).contains(">100<", ">80<", ">20<").doesNotContain(">92<");
  }
}
