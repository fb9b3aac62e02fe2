package pressweek.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import pressweek.data.guide.Guide;
import pressweek.reports.guide.Practice;
import pressweek.reports.guide.PracticePage;
import pressweek.reports.guide.Question;
import pressweek.reports.guide.Question.Level;

/** Prints practice questions on the item code, or writes them as a page with answers. */
@Command(
    name = "practise",
    description =
        "Practice questions on the item code: what codes mean, codes for words, faults to spot.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:the questions were printed or written",
      "2:the folder or its guide cannot be read, or the page cannot be written"
    })
final class PractiseCommand implements Callable<Integer> {
  private static final int MOST_QUESTIONS = 500;

  @Spec private CommandSpec spec;
  @Mixin private GuidedFolder folder;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Another seed gives other questions (default: ${DEFAULT-VALUE}).")
  private long seed = 1;

  @Option(
      names = "--questions",
      paramLabel = "N",
      description = "How many (default: ${DEFAULT-VALUE}).")
  private int questions = 20;

  @Option(names = "--answers", description = "Print the answers, too.")
  private boolean answers;

  @Option(
      names = "--out",
      paramLabel = "FILE.html",
      description = "Write a page with questions and answers instead.")
  private String out = "";

  @Override
  public Integer call() {
    if (questions < 1 || questions > MOST_QUESTIONS) {
      throw new ParameterException(
          spec.commandLine(), "--questions is " + questions + "; expected 1 to " + MOST_QUESTIONS);
    }
    PrintWriter err = spec.commandLine().getErr();
    Optional<Guide> guide = folder.read(err).flatMap(found -> found.explainer().guide());
    if (guide.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Practice practice = Practice.of(guide.get(), seed, questions);
    if (practice.questions().size() < questions) {
      err.println(
          "the guide gives no more than "
              + Counts.of(practice.questions().size(), "different question"));
    }
    if (!out.isEmpty()) {
      return WrittenPage.write(Path.of(out), PracticePage.html(practice), spec.commandLine());
    }
    print(practice, spec.commandLine().getOut());
    return ExitCode.DONE;
  }

  private void print(Practice practice, PrintWriter to) {
    to.println("Practice: " + practice.guide() + ", sheet " + practice.seed());
    int number = 1;
    for (Level level : Level.values()) {
      List<Question> all = practice.of(level);
      if (!all.isEmpty()) {
        to.println();
        to.println(level.title());
      }
      for (Question question : all) {
        String asked = question.ask() + "  " + question.about();
        Paragraph.of(numbered(number++), asked).forEach(to::println);
      }
    }
    if (answers) {
      to.println();
      to.println("Answers");
      for (int i = 0; i < practice.questions().size(); i++) {
        answer(i + 1, practice.questions().get(i)).forEach(to::println);
      }
    }
    to.flush();
  }

  private static String numbered(int number) {
    return " ".repeat(number < 10 ? 2 : 1) + number + ". ";
  }

  private static List<String> answer(int number, Question question) {
    List<String> lines = new ArrayList<>(Paragraph.of(numbered(number), question.answer()));
    int width = question.why().stream().mapToInt(row -> row.text().length()).max().orElse(0);
    int partWidth = question.why().stream().mapToInt(row -> row.part().length()).max().orElse(0);
    for (Question.Row row : question.why()) {
      String head = "       " + pad(row.text(), width) + "  " + pad(row.part(), partWidth) + "  ";
      lines.addAll(Paragraph.of(head, row.means()));
    }
    return lines;
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}
