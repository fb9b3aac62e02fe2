package pressweek.reports.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import pressweek.data.guide.Field;
import pressweek.data.guide.Guide;

class CodeSheetTest {
  static Document page(String html) throws Exception {
    String xml = html.substring(html.indexOf('\n') + 1);
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)));
  }

  private static String text(String html) throws Exception {
    return page(html).getDocumentElement().getTextContent();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "quillback-week",
        "quillback-small",
        "guides/brindlecote",
        "guides/dunnockfield",
        "guides/sallowmere",
        "guides/tambreck",
        "guides/wrenhollow"
      })
  void everySymbolStandsOnTheSheet(String example) throws Exception {
    Guide guide = ExampleGuide.of(example);
    NodeList codes = page(CodeSheet.html(guide, "")).getElementsByTagName("code");
    Set<String> shown = new HashSet<>();
    for (int i = 0; i < codes.getLength(); i++) {
      shown.add(codes.item(i).getTextContent());
    }
    for (Field field : guide.sheet().fields()) {
      if (field instanceof Field.Table table) {
        assertThat(shown).containsAll(table.entries().keySet());
      }
    }
  }

  @Test
  void sheetOfTheDemoPlantSaysWhatTheDeskAsks() throws Exception {
    String text = text(CodeSheet.html(ExampleGuide.quillback(), "Quillback Grips"));
    assertThat(text)
        .contains("Quillback Grips item code")
        .contains("head / nut / material / metal / [food contact] / [restricted substances]")
        .contains("10 to 60 mm in steps of 5")
        .contains("the figure is the head size, mm")
        .contains("A ball or mushroom knob takes only a blind or tall nut: the crown stays closed")
        .contains("Food contact means solid hub: no hollow in which food could stay")
        .contains("A head on a stud takes no handwheel, dial knob or tapered handle")
        .contains("Cored hub: heads are cored unless the code says F")
        .contains("\u201cred\u201d: signal red; signal red is the plant's usual red")
        .contains("Polypropylene: grips are polypropylene unless said otherwise")
        .contains("M8 (M8x1.25) looks like U516 (5/16-18 UNC)");
  }

  @Test
  void exampleCodeIsGoodAndItsPiecesMakeItUp() throws Exception {
    Guide guide = ExampleGuide.quillback();
    String code = CodePicture.example(guide, guide.families().get(0)).orElseThrow().code();
    assertThat(guide.decode(code).good()).isTrue();
    assertThat(code).contains("/FC").contains("/RS");
    Document page = page(CodeSheet.html(guide, ""));
    NodeList all = page.getElementsByTagName("div");
    StringBuilder pieces = new StringBuilder();
    for (int i = 0; i < all.getLength(); i++) {
      String cssClass = ((Element) all.item(i)).getAttribute("class");
      if (Set.of("piece", "piece mark", "joint").contains(cssClass)) {
        pieces.append(all.item(i).getFirstChild().getTextContent());
      }
    }
    assertThat(pieces).hasToString(code);
  }

  @Test
  void fillCharactersAndSpecialsAreTold() throws Exception {
    assertThat(text(CodeSheet.html(ExampleGuide.brindlecote(), "")))
        .contains("---- none; 0 fills up to 4, from the left")
        .contains("00 standard")
        .contains("01 to 99: an item with a record of its own")
        .contains("written without the point and with 2 decimals");
  }

  @Test
  void pageNeedsNothingElseAndEscapesWhatTheGuideSays() {
    Guide guide = ExampleGuide.quillback();
    String html = CodeSheet.html(guide, "<script>alert(1)</script>");
    assertThat(html)
        .startsWith("<!DOCTYPE html>")
        .contains("default-src &#39;none&#39;")
        .contains("&lt;script&gt;")
        .doesNotContain("<script")
        .doesNotContain("src=")
        .doesNotContain("@import")
        .doesNotContain("url(");
    assertThat(CodeSheet.html(guide, "")).isEqualTo(CodeSheet.html(guide, ""));
  }

  @Test
  void listsInWordsAreJoinedAsPeopleJoinThem() {
    assertThat(Phrasebook.or(List.of("blind nut"))).isEqualTo("blind nut");
    assertThat(Phrasebook.or(List.of("blind nut", "tall nut"))).isEqualTo("blind or tall nut");
    assertThat(Phrasebook.or(List.of("black", "slate grey", "wine red")))
        .isEqualTo("black, slate grey or wine red");
    assertThat(Phrasebook.or(List.of("PA66, filled", "PBT, filled", "PF")))
        .isEqualTo("PA66, filled; PBT, filled; or PF");
  }

  @Test
  void valuesAreNamedWithWhatTheyAreTheValueOf() {
    Phrasebook words = new Phrasebook(ExampleGuide.quillback());
    assertThat(words.value("hub", "solid")).isEqualTo("solid hub");
    assertThat(words.value("insert_pieces", "2")).isEqualTo("2 insert pieces");
    assertThat(words.value("length_mm", "25")).isEqualTo("length 25 mm");
    assertThat(words.value("insert_kind", "tall")).isEqualTo("tall nut");
    assertThat(words.value("second_insert_kind", "stud")).isEqualTo("second stud");
    assertThat(words.value("food", "yes")).isEqualTo("food contact");
    assertThat(words.values("head_size_mm", List.of("25", "32")))
        .isEqualTo("head size 25 or 32 mm");
  }
}
