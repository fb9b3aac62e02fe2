package pressweek.reports.guide;

import java.util.ArrayList;
import java.util.List;
import pressweek.reports.guide.Question.Level;
import pressweek.reports.guide.Question.Row;
import pressweek.reports.markup.Element;

/** Practice questions as a page to print, with the answers on sheets of their own. */
public final class PracticePage {
  private PracticePage() {}

  /** The page. */
  public static String html(Practice practice) {
    String title = "Practice: " + practice.guide();
    List<Element> content = new ArrayList<>();
    content.add(head(title, practice));
    int number = 1;
    for (Level level : Level.values()) {
      List<Question> questions = practice.of(level);
      if (!questions.isEmpty()) {
        Element list = list("questions", number);
        questions.forEach(question -> list.add(ask(question).add(Element.of("div", "line"))));
        String cssClass = level == Level.ONE_PART ? "practice short" : "practice";
        content.add(Paper.section(cssClass, level.title(), List.of(list)));
        number += questions.size();
      }
    }
    content.add(head("Answers: " + practice.guide(), practice).attr("id", "answers"));
    Element answers = list("questions answers", 1);
    practice.questions().forEach(question -> answers.add(answer(question)));
    content.add(Element.of("section", "practice").add(answers));
    return Paper.page(title, content);
  }

  private static Element head(String heading, Practice practice) {
    boolean first = heading.startsWith("Practice");
    return Element.of("header", first ? "" : "sheetbreak")
        .add("h1", heading)
        .add("p", practice.questions().size() + " questions, sheet " + practice.seed());
  }

  private static Element list(String cssClass, int start) {
    return Element.of("ol", cssClass).attr("start", Integer.toString(start));
  }

  private static Element ask(Question question) {
    boolean code = question.ask().contains("this code") || question.ask().contains(" mean?");
    Element about = code ? Paper.code(question.about()) : Element.of("b").text(question.about());
    return Element.of("li").text(question.ask() + " ").add(about);
  }

  private static Element answer(Question question) {
    Element item = ask(question).add(Element.of("p", "answer").text(question.answer()));
    if (!question.why().isEmpty()) {
      Element rows = Element.of("table", "why");
      for (Row row : question.why()) {
        rows.add(
            Element.of("tr")
                .add(Element.of("th").add(Paper.code(row.text())))
                .add("td", row.part())
                .add("td", row.means()));
      }
      item.add(rows);
    }
    return item;
  }
}
