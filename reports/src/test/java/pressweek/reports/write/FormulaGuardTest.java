package pressweek.reports.write;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaGuardTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+cmd|' /C calc'!A0",
        "-2+3",
        "@SUM(A1)",
        "\t=1",
        "\r=1",
        "\n=1",
        "\uFF1D1",
        "-",
        "'=1",
        "''+1",
        "=1\n2"
      })
  void textThatASpreadsheetWouldRunGetsAnApostrophe(String text) {
    assertThat(FormulaGuard.guarded(text)).isEqualTo("'" + text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "4711",
        "-5",
        "+3.5",
        "-1,25",
        "LV90/M8",
        "a=b",
        "'quoted'",
        "2026-12-01T14:00+01:00"
      })
  void otherTextAndNumbersStay(String text) {
    assertThat(FormulaGuard.guarded(text)).isEqualTo(text);
  }

  @Test
  void oneApostropheLessGivesTheTextBack() {
    assertThat(FormulaGuard.guarded("'=1").substring(1)).isEqualTo("'=1");
    assertThat(FormulaGuard.guarded("'=1")).isNotEqualTo(FormulaGuard.guarded("=1"));
  }
}
