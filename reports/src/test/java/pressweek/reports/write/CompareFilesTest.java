package pressweek.reports.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.Test;
import pressweek.reports.compare.SampleTried;
import pressweek.reports.compare.SideBySide;

class CompareFilesTest {
  private static String text(SideBySide all, String file) {
    Map<String, byte[]> files = CompareFiles.of(all);
    assertThat(files)
        .containsOnlyKeys("compare.html", "meeting.html", "compare.xlsx", "compare.csv");
    return new String(files.get(file), StandardCharsets.UTF_8);
  }

  @Test
  void pageSaysItFirstAndNeedsNothingElse() {
    String page = text(SampleTried.sample(), "compare.html");

    assertThat(page)
        .contains("A Saturday shift: 1 more line on time, EUR 40 cheaper, sure over all 3 seeds.")
        .contains("default-src &#39;none&#39;")
        .doesNotContain("http://")
        .doesNotContain("https://")
        .doesNotContain("<b>new</b>");
    assertThat(page.indexOf("sure over all 3 seeds")).isLessThan(page.indexOf("<table"));
  }

  @Test
  void hatchingsAndLegendAreThereOnce() {
    String page = text(SampleTried.sample(), "compare.html");

    assertThat(page.split("id=\"hatch-change\"", -1)).hasSize(2);
    assertThat(page.split("What the marks mean", -1)).hasSize(2);
    assertThat(page.split("class=\"wall\"", -1)).hasSize(4);
    assertThat(page).contains("href=\"A-Saturday-shift/index.html#run-R2\"");
  }

  @Test
  void withoutRatesNoMoneyIsShown() {
    SideBySide all = SampleTried.withoutMoney();

    assertThat(text(all, "compare.html")).doesNotContain("EUR").doesNotContain("void");
    assertThat(text(all, "meeting.html")).doesNotContain("EUR");
    assertThat(text(all, "compare.csv")).doesNotContain("cost").contains("on_time");
  }

  @Test
  void listHasARowAFigureAndScenario() {
    assertThat(text(SampleTried.sample(), "compare.csv").lines())
        .contains(
            "figure,words,unit,scenario,best_plan,least,most,difference,certainty",
            "cost,avoidable cost,EUR,As it stands,117.5,117.5,127.5,,",
            "cost,avoidable cost,EUR,A Saturday shift,77.5,77.5,87.5,-40,sure",
            "on_time,lines on time (due),,A Saturday shift,3,3,3,1,sure",
            "cost,avoidable cost,EUR,Nothing <b>new</b>,118.5,118.5,127.5,1,within");
  }

  @Test
  void workbookHasTheNumbersBehindEachPicture() throws IOException {
    byte[] bytes = CompareFiles.of(SampleTried.sample()).get("compare.xlsx");
    try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(bytes))) {
      assertThat(workbook.getSheets().map(Sheet::getName).collect(Collectors.toList()))
          .containsExactly("in short", "compare", "plans", "cost", "load", "shifts", "lines");
    }
  }

  @Test
  void aRejectedPlanIsNamedAndNotShown() {
    String page = text(SampleTried.broken(), "compare.html");

    assertThat(page)
        .contains("Impossible: the audit rejected 1 plan for breaking hard rules.")
        .contains("rejected")
        .doesNotContain("67.50");
  }
}
