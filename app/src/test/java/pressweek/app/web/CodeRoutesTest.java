package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CodeRoutesTest {
  @TempDir private static Path dir;
  private static OpenPages pages;

  @BeforeAll
  static void open() throws Exception {
    pages = new OpenPages(dir, true);
  }

  @AfterAll
  static void close() {
    pages.close();
  }

  @Test
  void codeIsExplainedInItsParts() throws Exception {
    JsonNode json = pages.get("/api/decode?code=KB32/M8-B/PP-BLK/ZN").json();
    assertThat(json.path("canonical").asText()).isEqualTo("KB32/M8-B/PP-BLK/ZN");
    assertThat(json.path("parts").findValuesAsText("text"))
        .containsExactly("KB32", "M8-B", "PP-BLK", "ZN");
    assertThat(json.path("molds").findValuesAsText("mold")).contains("M-KB32");
  }

  @Test
  void faultyCodeSaysWhere() throws Exception {
    JsonNode json = pages.get("/api/decode?code=KB32/M8-Q/PP-BLK/ZN").json();
    assertThat(json.path("fault").path("position").asInt()).isEqualTo(9);
    assertThat(json.path("fault").path("seen").asText()).isEqualTo("Q");
  }

  @Test
  void wordsAreRead() throws Exception {
    JsonNode json = pages.get("/api/words?text=black%20ball%20knob%2032%20M8").json();
    assertThat(json.path("readings")).isNotEmpty();
    assertThat(json.path("readings").get(0).path("code").asText()).startsWith("KB32/M8");
  }

  @Test
  void sheetAndPracticeRunNothingFromElsewhere() throws Exception {
    for (String path : new String[] {"/api/codes/sheet", "/api/codes/practice?seed=7"}) {
      OpenPages.Answer answer = pages.get(path);
      assertThat(answer.status()).isEqualTo(200);
      assertThat(answer.type()).startsWith("text/html");
      assertThat(answer.response().headers().firstValue("Content-Security-Policy").orElse(""))
          .startsWith("default-src 'none'")
          .doesNotContain("unsafe");
      assertThat(answer.text()).doesNotContain(" style=\"");
    }
    assertThat(pages.get("/api/codes/practice?seed=7").text())
        .isEqualTo(pages.get("/api/codes/practice?seed=7").text())
        .isNotEqualTo(pages.get("/api/codes/practice?seed=8").text());
  }

  @Test
  void questionsWithoutAnythingAreRefused() throws Exception {
    assertThat(pages.get("/api/decode").status()).isEqualTo(400);
    assertThat(pages.get("/api/words?text=").status()).isEqualTo(400);
    assertThat(pages.get("/api/codes/practice?seed=x").status()).isEqualTo(400);
    assertThat(pages.get("/api/codes/practice?seed=-1").status()).isEqualTo(400);
    assertThat(pages.get("/api/words?text=" + "x".repeat(7_000)).status()).isIn(200, 400, 414, 431);
  }
}
