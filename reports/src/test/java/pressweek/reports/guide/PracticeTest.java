package pressweek.reports.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pressweek.data.guide.Guide;
import pressweek.reports.guide.Question.Level;

class PracticeTest {
  private static final Guide QUILLBACK = ExampleGuide.quillback();

  @Test
  void sameSeedGivesTheSameQuestions() {
    assertThat(Practice.of(QUILLBACK, 4, 20)).isEqualTo(Practice.of(QUILLBACK, 4, 20));
    assertThat(Practice.of(QUILLBACK, 4, 20).questions())
        .isNotEqualTo(Practice.of(QUILLBACK, 5, 20).questions());
  }

  @Test
  void questionsRiseFromOnePartToRules() {
    Practice practice = Practice.of(QUILLBACK, 1, 20);
    assertThat(practice.questions()).hasSize(20).doesNotHaveDuplicates();
    assertThat(practice.questions()).extracting(Question::level).isSorted();
    assertThat(practice.of(Level.ONE_PART)).hasSize(6);
    assertThat(practice.of(Level.WHOLE_CODE)).hasSize(8);
    assertThat(practice.of(Level.RULES)).hasSize(6);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "quillback-week",
        "guides/brindlecote",
        "guides/dunnockfield",
        "guides/sallowmere",
        "guides/tambreck",
        "guides/wrenhollow"
      })
  void answersAreRight(String example) {
    Guide guide = ExampleGuide.of(example);
    int asked = 0;
    for (Question question : Practice.of(guide, 2, 60).questions()) {
      switch (question.ask()) {
        case "What is the code for this?" -> {
          assertThat(guide.decode(question.answer()).faults()).isEmpty();
          assertThat(guide.encoder().canonical(question.answer())).isEqualTo(question.answer());
          asked++;
        }
        case "What does this code mean?" -> {
          assertThat(guide.decode(question.about()).faults()).isEmpty();
          asked++;
        }
        case "What is wrong with this code?" -> {
          assertThat(guide.decode(question.about()).good()).isFalse();
          assertThat(question.answer())
              .startsWith(guide.explain(question.about()).fault().orElseThrow().sentence());
          asked++;
        }
        default -> assertThat(question.answer()).isNotBlank();
      }
    }
    assertThat(asked).isGreaterThan(25);
  }

  @Test
  void explanationsGoThroughTheCodePartByPart() {
    for (Question question : Practice.of(QUILLBACK, 3, 40).of(Level.WHOLE_CODE)) {
      String code = question.ask().startsWith("What does") ? question.about() : question.answer();
      List<String> parts =
          question.why().stream().map(Question.Row::text).filter(t -> !t.isEmpty()).toList();
      assertThat(String.join("/", parts)).isEqualTo(code);
    }
  }

  @Test
  void smallGuideGivesFewerQuestionsRatherThanTheSameTwice() {
    Practice practice = Practice.of(ExampleGuide.of("quillback-small"), 1, 300);
    assertThat(practice.questions()).hasSizeLessThan(300).doesNotHaveDuplicates();
  }

  @Test
  void pageHasTheAnswersBehindTheQuestions() throws Exception {
    Practice practice = Practice.of(QUILLBACK, 1, 20);
    String html = PracticePage.html(practice);
    CodeSheetTest.page(html);
    int answers = html.indexOf("id=\"answers\"");
    assertThat(answers).isPositive();
    String code =
        practice.of(Level.WHOLE_CODE).stream()
            .filter(question -> question.ask().endsWith("for this?"))
            .findFirst()
            .orElseThrow()
            .answer();
    assertThat(html.indexOf(code)).isGreaterThan(answers);
    assertThat(html).contains("class=\"sheetbreak\"").doesNotContain("<script");
  }
}
