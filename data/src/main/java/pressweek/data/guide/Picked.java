package pressweek.data.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A part of a code as it was put together.
 *
 * @param part index of the part in its family
 * @param form how it is written
 * @param choices what is written for its fields, in their order
 */
public record Picked(int part, Form form, List<Choice> choices) {
  public Picked {
    choices = List.copyOf(choices);
  }

  /** The part as it stands in the code. */
  public String text() {
    StringBuilder text = new StringBuilder();
    int field = 0;
    for (Form.Piece piece : form.pieces()) {
      text.append(
          piece instanceof Form.Literal literal ? literal.text() : choices.get(field++).text());
    }
    return text.toString();
  }

  /** What the form and its fields say, one map for each. */
  public List<Map<String, String>> says() {
    List<Map<String, String>> says = new ArrayList<>();
    if (!form.sets().isEmpty()) {
      says.add(form.sets());
    }
    choices.forEach(choice -> says.add(choice.sets()));
    return says;
  }

  /** True when it says something of one of these attributes. */
  boolean saysAny(List<String> attributes) {
    for (Map<String, String> says : says()) {
      for (String name : says.keySet()) {
        if (attributes.contains(name)) {
          return true;
        }
      }
    }
    return false;
  }
}
