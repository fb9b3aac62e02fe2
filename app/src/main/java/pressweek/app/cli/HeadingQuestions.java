package pressweek.app.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.Headings;
import pressweek.data.files.Headings.Proposal;
import pressweek.data.files.InputFile;

/** Asks, once a heading, what cannot be told from the headings alone. */
final class HeadingQuestions {
  private static final String LEAVE_OUT = "-";

  private final InputFile file;
  private final BufferedReader answers;
  private final PrintWriter out;
  private final Map<String, String> mapping = new LinkedHashMap<>();

  /**
   * Questions about the headings of a file.
   *
   * @param answers where the answers come from, one a line
   * @param out where the questions go
   */
  HeadingQuestions(InputFile file, BufferedReader answers, PrintWriter out) {
    this.file = file;
    this.answers = answers;
    this.out = out;
  }

  /**
   * The mapping with every proposal taken; a heading that only the plant can explain is not in it.
   */
  Map<String, String> acceptAll(List<Proposal> proposals) {
    proposals.stream()
        .filter(p -> p.choices().isEmpty())
        .forEach(p -> mapping.put(p.heading(), p.column()));
    return mapping;
  }

  /** The mapping with every doubt asked; empty when the answers end too early. */
  Optional<Map<String, String>> ask(List<Proposal> proposals) throws IOException {
    proposals.stream().filter(Proposal::sure).forEach(p -> mapping.put(p.heading(), p.column()));
    Map<String, String> ordered = new LinkedHashMap<>();
    for (Proposal proposal : proposals) {
      if (!proposal.sure()) {
        Optional<String> column = ask(proposal);
        if (column.isEmpty()) {
          return Optional.empty();
        }
        mapping.put(proposal.heading(), column.get());
      }
      ordered.put(proposal.heading(), mapping.getOrDefault(proposal.heading(), ""));
    }
    return Optional.of(ordered);
  }

  private Optional<String> ask(Proposal proposal) throws IOException {
    while (true) {
      out.print(question(proposal));
      out.flush();
      String line = answers.readLine();
      if (line == null) {
        out.println();
        return Optional.empty();
      }
      Optional<String> column = column(proposal, line.strip());
      if (column.isPresent()) {
        return column;
      }
    }
  }

  private static String question(Proposal proposal) {
    String heading = "\"" + proposal.heading() + "\"";
    if (!proposal.choices().isEmpty()) {
      return heading
          + ": "
          + proposal.because()
          + " "
          + String.join(", ", proposal.choices())
          + ", or - to leave it out: ";
    }
    if (proposal.column().isEmpty()) {
      return heading + ": no column is like it. Enter leaves it out, or name a column: ";
    }
    return heading
        + " -> "
        + proposal.column()
        + " ("
        + proposal.because()
        + "). Enter takes it, - leaves it out, or name a column: ";
  }

  /** What an answer means; empty, with a word why, when it means nothing. */
  private Optional<String> column(Proposal proposal, String answer) {
    if (answer.equals(LEAVE_OUT)) {
      return Optional.of("");
    }
    if (answer.isEmpty() && !proposal.choices().isEmpty()) {
      return Optional.empty();
    }
    String name = answer.isEmpty() ? proposal.column() : answer;
    Optional<String> column = name.isEmpty() ? Optional.of("") : Headings.column(file, name);
    if (column.isEmpty()) {
      out.println(
          "\""
              + name
              + "\" is no column; expected one of "
              + String.join(", ", Headings.columns(file)));
      return Optional.empty();
    }
    Optional<String> other = usedBy(column.get());
    if (other.isPresent()) {
      out.println(
          column.get() + " is \"" + other.get() + "\" already; expected another column, or -");
      return Optional.empty();
    }
    return Optional.of(name);
  }

  private Optional<String> usedBy(String column) {
    return mapping.entrySet().stream()
        .filter(e -> !column.isEmpty())
        .filter(e -> Headings.column(file, e.getValue()).filter(column::equals).isPresent())
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
