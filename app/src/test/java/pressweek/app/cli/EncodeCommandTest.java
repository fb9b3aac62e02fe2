package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EncodeCommandTest {
  private static final String WEEK = "../examples/quillback-week";

  @Test
  void attributesBecomeACode() {
    Ran ran =
        Ran.pressweek(
            "encode",
            WEEK,
            "head_style=star knob",
            "head_size_mm=50",
            "thread=M8",
            "insert_kind=stud",
            "length_mm=30",
            "resin=PP",
            "colour=BLK",
            "insert_material=A2");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out().strip()).isEqualTo("ST50/M8-S30/PP-BLK/A2");
  }

  @Test
  void whatIsOpenIsAsked() {
    Ran ran = Ran.pressweek("encode", WEEK, "head=ST50", "thread=M8", "resin=PP", "colour=BLK");
    assertThat(ran.exitCode()).isEqualTo(1);
    assertThat(ran.lines().get(0)).isEqualTo("ST50/M8-?/PP-BLK/?  (head on a nut)");
    assertThat(ran.lines()).contains("  open: nut  B, T, L, H (insert_kind)");
  }

  @Test
  void whatDoesNotGoTogetherIsSaid() {
    Ran ran = Ran.pressweek("encode", WEEK, "head_style=ball knob", "insert_kind=through");
    assertThat(ran.exitCode()).isEqualTo(1);
    assertThat(ran.out()).contains("the crown stays closed");
    Ran size = Ran.pressweek("encode", WEEK, "head_style=star knob", "head_size_mm=48");
    assertThat(size.out()).contains("no item has head_size_mm \"48\"; nearest: 50, 45, 40");
  }

  @Test
  void spellingsOfOneItemGetOneCode() {
    Ran ran =
        Ran.pressweek(
            "encode", WEEK, "LV90-F/M10-B/PP-SGR/A2/FC", "lv90/m10-b/pp-sgr/a2/fc", "LV90/M10-B");
    assertThat(ran.lines().subList(0, 2))
        .containsExactly("LV90/M10-B/PP-SGR/A2/FC", "LV90/M10-B/PP-SGR/A2/FC");
    assertThat(ran.exitCode()).isEqualTo(1);
    assertThat(ran.lines().get(2)).contains("the code ends at position 11");
  }

  @Test
  void codesAndAttributesDoNotMix() {
    assertThat(Ran.pressweek("encode", WEEK, "LV90", "head=LV90").exitCode()).isEqualTo(2);
  }

  @Test
  void theNextFreeSpecialIsTold() {
    Ran ran = Ran.pressweek("special", WEEK, "LV90/M10-B/PP-SGR/A2");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.lines().get(0)).isEqualTo("LV90/M10-B/PP-SGR/A2/X01");
    assertThat(Ran.pressweek("special", WEEK, "LV90").exitCode()).isEqualTo(1);
  }

  @Test
  void unknownAttributesNumbersAndDoublesAreTold() {
    assertThat(Ran.pressweek("encode", WEEK, "hed=ST50").out())
        .contains("the guide has no attribute \"hed\"; nearest: head");
    assertThat(Ran.pressweek("encode", WEEK, "head=ST50", "length_mm=22").out())
        .contains("no item has length_mm \"22\"; expected 10 to 60 mm in steps of 5");
    assertThat(Ran.pressweek("encode", WEEK, "head=ST50", "head=KB40").exitCode()).isEqualTo(2);
  }
}
