package pressweek.reports.guide;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.guide.CodeDraw;
import pressweek.data.guide.Guide;
import pressweek.reports.guide.Question.Level;

/**
 * Practice questions for whoever learns a code: one part first, then whole codes, then rules and
 * faults. The same seed gives the same questions.
 *
 * @param guide name of the guide
 * @param seed seed
 * @param questions questions with their answers, the easiest first
 */
public record Practice(String guide, long seed, List<Question> questions) {
  /** Of ten questions so many are about one part of a code, and so many about whole codes. */
  private static final int ONE_PART = 3;

  private static final int WHOLE_CODE = 4;

  /** Draws for one question; a guide that has run out of new ones gives fewer questions. */
  private static final int TRIES = 200;

  public Practice {
    questions = List.copyOf(questions);
  }

  /**
   * Questions from a guide.
   *
   * @param count how many; a guide with few symbols gives fewer
   */
  public static Practice of(Guide guide, long seed, int count) {
    Draws draws = new Draws(guide, new CodeDraw(guide, seed));
    int easy = count * ONE_PART / 10;
    int whole = count * WHOLE_CODE / 10;
    PartQuestions parts = new PartQuestions(draws);
    CodeQuestions codes = new CodeQuestions(draws);
    FaultQuestions faults = new FaultQuestions(draws);
    List<Question> questions = new ArrayList<>();
    add(questions, easy, parts);
    add(questions, whole, codes);
    add(questions, count - easy - whole, faults);
    return new Practice(guide.sheet().name(), seed, questions);
  }

  private static void add(List<Question> questions, int count, Source source) {
    int before = questions.size();
    for (int tries = 0; tries < TRIES + count && questions.size() - before < count; tries++) {
      int next = questions.size() - before;
      source
          .question(next + tries / TRIES)
          .filter(one -> questions.stream().noneMatch(asked -> same(asked, one)))
          .ifPresent(questions::add);
    }
  }

  private static boolean same(Question one, Question other) {
    return one.about().equals(other.about()) && one.answer().equals(other.answer());
  }

  /** The questions of a level. */
  public List<Question> of(Level level) {
    return questions.stream().filter(question -> question.level() == level).toList();
  }
}
