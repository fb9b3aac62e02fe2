package pressweek.reports.markup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class ElementTest {
  @Test
  void textAndAttributesAreEscaped() {
    Element element = Element.of("p", "a\"b'c").text("<b> & \"c\" 'd'");
    assertThat(element)
        .hasToString("<p class=\"a&quot;b&#39;c\">&lt;b&gt; &amp; &quot;c&quot; &#39;d&#39;</p>");
  }

  @Test
  void charactersThatMarkupMayNotHoldAreReplaced() {
    assertThat(Element.of("p").text("a\u0000b\u001Bc\uD800d\uFFFEe\u0085f\tg\u00E9\uD83D\uDE00"))
        .hasToString("<p>a\uFFFDb\uFFFDc\uFFFDd\uFFFDe\uFFFDf\tg\u00E9\uD83D\uDE00</p>");
  }

  @Test
  void childrenStandInTheirOrder() {
    Element list = Element.of("ul").add("li", "one").addAll(List.of(Element.of("li").text("two")));
    assertThat(list).hasToString("<ul><li>one</li><li>two</li></ul>");
  }

  @Test
  void elementsWithoutContentAreClosed() {
    assertThat(Element.of("meta").attr("charset", "UTF-8"))
        .hasToString("<meta charset=\"UTF-8\"/>");
    assertThat(Element.of("p", "")).hasToString("<p></p>");
  }

  @Test
  void verbatimContentMayNotEndItsElement() {
    assertThat(Element.verbatim("style", "a > b { }")).hasToString("<style>a > b { }</style>");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Element.verbatim("script", "x = '</script>'"))
        .withMessage("content would end the script element");
  }

  @Test
  void pixelsHaveOneDecimalAtMost() {
    assertThat(Pixels.text(12)).isEqualTo("12");
    assertThat(Pixels.text(12.46)).isEqualTo("12.5");
    assertThat(Pixels.text(-0.04)).isEqualTo("0");
    assertThat(Pixels.text(-3.25)).isEqualTo("-3.2");
  }

  @Test
  void anchorOfAnUnusualRunIsWrittenInHexadecimal() {
    assertThat(Anchor.run("R017")).isEqualTo("run-R017");
    assertThat(Anchor.run("R 1\"")).isEqualTo("run-x52203122");
  }
}
