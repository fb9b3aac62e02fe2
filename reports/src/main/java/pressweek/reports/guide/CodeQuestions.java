package pressweek.reports.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.guide.Choice;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.Field;
import pressweek.data.guide.Picked;
import pressweek.reports.guide.Question.Level;

/** Questions about whole codes: what one means, and the code for what a customer asks. */
final class CodeQuestions implements Source {
  private final Draws draws;

  CodeQuestions(Draws draws) {
    this.draws = draws;
  }

  @Override
  public Optional<Question> question(int turn) {
    return draws
        .good()
        .map(
            drawn ->
                turn % 2 == 0
                    ? new Question(
                        Level.WHOLE_CODE,
                        "What does this code mean?",
                        drawn.code(),
                        words(drawn, false),
                        draws.explain(drawn))
                    : new Question(
                        Level.WHOLE_CODE,
                        "What is the code for this?",
                        words(drawn, true),
                        drawn.code(),
                        draws.explain(drawn)));
  }

  /** An item in words, part by part; as customers say it, now and then in other words. */
  private String words(Drawn drawn, boolean customers) {
    List<String> words = new ArrayList<>();
    for (Picked part : drawn.parts()) {
      List<String> own = new ArrayList<>();
      List<Field> fields = part.form().fields();
      for (int i = 0; i < fields.size(); i++) {
        own.add(symbol(fields.get(i), part.choices().get(i), customers));
      }
      words.add(draws.words().part(part.form(), own));
    }
    return String.join(", ", words.stream().filter(word -> !word.isEmpty()).toList());
  }

  private String symbol(Field field, Choice choice, boolean customers) {
    List<String> synonyms = draws.words().synonyms(choice.sets());
    if (choice.symbol().isEmpty() && choice.sets().isEmpty()) {
      return "standard " + Phrasebook.plain(field.name());
    }
    return customers && !synonyms.isEmpty() && draws.draw().below(2) == 0
        ? draws.one(synonyms)
        : draws.words().symbol(field, choice);
  }
}
