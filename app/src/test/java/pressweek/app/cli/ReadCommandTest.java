package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ReadCommandTest {
  private static final String WEEK = "../examples/quillback-week";

  @Test
  void wordsAreReadWithWhatWasAssumed() {
    Ran ran = Ran.pressweek("read", WEEK, "2 in lobe knob, 5/16-18 through nut, zinc, black");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.lines().get(1)).isEqualTo(" 1. TR50/U516-T/PP-BLK/ZN  (head on a nut)");
    assertThat(ran.lines())
        .contains(
            "    understood  2 in             head_size_mm 50",
            "    assumed     head_size_mm 50: head size 2 in = 50.8 mm is taken as 50 mm",
            "                resin PP: grips are polypropylene unless said otherwise")
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void whatCannotBeBothIsSaid() {
    Ran ran = Ran.pressweek("read", WEEK, "40 mm ball knob, M8 x 30 stud, blind nut");
    assertThat(ran.exitCode()).isEqualTo(1);
    assertThat(ran.out()).contains("against it  insert kind: stud and blind are both said");
  }

  @Test
  void jsonIsOneObjectALine() {
    Ran ran = Ran.pressweek("read", WEEK, "--as", "json", "star knob 50 mm M8", "wing knob");
    assertThat(ran.lines()).hasSize(2);
    assertThat(ran.lines().get(0))
        .contains("\"code\":\"ST50/M8-B/PP-BLK/ZN\"", "\"complete\":true");
    assertThat(ran.lines().get(1)).contains("\"complete\":false", "\"questions\":[\"which");
  }

  @Test
  void nothingSaidIsAnsweredToo() {
    assertThat(Ran.pressweek("read", WEEK, "").exitCode()).isEqualTo(1);
    assertThat(Ran.pressweek("read", "../examples/three-files", "knob").exitCode()).isEqualTo(2);
  }

  @Test
  void whatIsRefusedOrUnclearIsAskedAndNotAssumed() {
    Ran grey = Ran.pressweek("read", WEEK, "star knob 50mm M8 blind grey not slate");
    assertThat(grey.exitCode()).isEqualTo(1);
    assertThat(grey.lines().get(1)).doesNotContain("BLK");
    Ran same = Ran.pressweek("read", WEEK, "LV90 M8 blind same as before");
    assertThat(same.out()).contains("not read");
    Ran lobes = Ran.pressweek("read", WEEK, "2 in 4-lobe knob M8 x 20 male SS");
    assertThat(lobes.out()).doesNotContain("quantity 4");
  }
}
