package pressweek.reports.guide;

import java.util.List;
import java.util.Optional;
import pressweek.data.guide.Choice;
import pressweek.data.guide.CodeSpace;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.Field;
import pressweek.data.guide.Picked;
import pressweek.reports.guide.Question.Level;

/** Questions about one symbol: what it means, and how something is written. */
final class PartQuestions implements Source {
  private final Draws draws;

  PartQuestions(Draws draws) {
    this.draws = draws;
  }

  @Override
  public Optional<Question> question(int turn) {
    Optional<Drawn> drawn = draws.good();
    if (drawn.isEmpty()) {
      return Optional.empty();
    }
    List<Picked> parts =
        drawn.get().parts().stream().filter(part -> !part.choices().isEmpty()).toList();
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    Picked part = draws.one(parts);
    int at = draws.draw().below(part.choices().size());
    Field field = part.form().fields().get(at);
    Choice choice = part.choices().get(at);
    CodeSpace space = draws.draw().space(drawn.get().family());
    String means = draws.words().underItsField(field, choice);
    long alike =
        space.choices(field).stream()
            .filter(other -> draws.words().underItsField(field, other).equals(means))
            .count();
    boolean trivial = means.equalsIgnoreCase(choice.text());
    if (alike > 1 || trivial || choice.symbol().isEmpty() || field instanceof Field.Special) {
      return Optional.empty();
    }
    String name = Phrasebook.plain(field.name());
    return Optional.of(
        turn % 2 == 0
            ? new Question(
                Level.ONE_PART,
                "What does this " + name + " mean?",
                choice.text(),
                means,
                List.of())
            : new Question(
                Level.ONE_PART,
                "How is this " + name + " written?",
                means,
                choice.text(),
                List.of()));
  }
}
