package pressweek.reports.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.guide.CodeFault;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.GuideWords.Phrase;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Origin;
import pressweek.reports.guide.Question.Level;

/** Questions about rules, about what is not written, about everyday words and about faults. */
final class FaultQuestions implements Source {
  private static final int KINDS = 5;
  private static final int TRIES = 60;

  private final Draws draws;

  FaultQuestions(Draws draws) {
    this.draws = draws;
  }

  @Override
  public Optional<Question> question(int turn) {
    return switch (turn % KINDS) {
      case 0 -> unwritten();
      case 1 -> slip();
      case 2 -> forbidden();
      case 3 -> everyday();
      default -> incomplete();
    };
  }

  /** What follows by a rule or is standard. */
  private Optional<Question> unwritten() {
    for (int i = 0; i < TRIES; i++) {
      Optional<Drawn> drawn = draws.good();
      if (drawn.isPresent()) {
        List<Attribute> follows =
            draws.guide().decode(drawn.get().code()).attributes().stream()
                .filter(a -> a.origin() == Origin.RULE || a.origin() == Origin.DEFAULT)
                .toList();
        if (!follows.isEmpty()) {
          Attribute one = draws.one(follows);
          String name = draws.words().attribute(one.name());
          String value = draws.words().value(one.name(), one.value());
          return Optional.of(
              new Question(
                  Level.RULES,
                  "No symbol of this code says the " + name + ". What is it, and why?",
                  drawn.get().code(),
                  value + ": " + one.because(),
                  draws.explain(drawn.get())));
        }
      }
    }
    return Optional.empty();
  }

  /** A code with one character wrong, or two that changed places. */
  private Optional<Question> slip() {
    Optional<Drawn> drawn = draws.good();
    if (drawn.isEmpty()) {
      return Optional.empty();
    }
    String code = drawn.get().code();
    for (int i = 0; i < TRIES && code.length() > 2; i++) {
      int at = draws.draw().below(code.length() - 1);
      StringBuilder slip = new StringBuilder(code);
      if (draws.draw().below(2) == 0) {
        slip.setCharAt(at, code.charAt(at + 1));
        slip.setCharAt(at + 1, code.charAt(at));
      } else {
        slip.setCharAt(at, code.charAt(draws.draw().below(code.length())));
      }
      boolean marked = Character.isLetterOrDigit(code.charAt(at));
      Optional<CodeFault> fault = draws.guide().explain(slip.toString()).fault();
      if (marked && fault.isPresent() && !draws.guide().decode(slip.toString()).good()) {
        return Optional.of(
            wrong(slip.toString(), fault.get().sentence() + " (meant was " + code + ")", drawn));
      }
    }
    return Optional.empty();
  }

  private Question wrong(String code, String answer, Optional<Drawn> right) {
    return new Question(
        Level.RULES,
        "What is wrong with this code?",
        code,
        answer,
        right.map(draws::explain).orElse(List.of()));
  }

  /** A code that can be read and that a rule forbids. */
  private Optional<Question> forbidden() {
    for (int i = 0; i < TRIES; i++) {
      Drawn drawn = draws.draw().any(draws.family());
      if (drawn.faults().size() == 1) {
        Optional<CodeFault> fault = draws.guide().explain(drawn.code()).fault();
        if (fault.isPresent() && draws.guide().readings(drawn.code()).isEmpty()) {
          return Optional.of(wrong(drawn.code(), fault.get().sentence(), Optional.empty()));
        }
      }
    }
    return Optional.empty();
  }

  /** A word that names no one thing. */
  private Optional<Question> everyday() {
    List<Phrase> phrases = draws.guide().words().everyday();
    if (phrases.isEmpty()) {
      return Optional.empty();
    }
    Phrase phrase = draws.one(phrases);
    String because = phrase.because().isEmpty() ? "" : ": " + phrase.because();
    return Optional.of(
        new Question(
            Level.RULES,
            "A customer writes only this. What do you read, and what do you tell them?",
            "\u201c" + draws.one(phrase.words()) + "\u201d",
            draws.words().meaning(phrase.set()) + because + "; say that it was assumed",
            List.of()));
  }

  /** A code from which a part is missing. */
  private Optional<Question> incomplete() {
    Optional<Drawn> drawn = draws.good();
    if (drawn.isEmpty() || drawn.get().parts().size() < 3) {
      return Optional.empty();
    }
    List<String> texts = drawn.get().parts().stream().map(part -> part.text()).toList();
    int gone = draws.draw().below(texts.size());
    String separator = draws.guide().sheet().separator();
    List<String> left = new ArrayList<>(texts);
    left.remove(gone);
    String code = String.join(separator, left);
    Optional<CodeFault> fault = draws.guide().explain(code).fault();
    boolean optional =
        drawn.get().family().parts().get(drawn.get().parts().get(gone).part()).optional();
    return optional
        ? Optional.empty()
        : fault.map(
            f -> wrong(code, f.sentence() + " (meant was " + drawn.get().code() + ")", drawn));
  }
}
