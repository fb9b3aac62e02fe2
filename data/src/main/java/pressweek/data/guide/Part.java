package pressweek.data.guide;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A part of a code.
 *
 * @param name name in words
 * @param forms alternatives, of which exactly one may fit
 * @param optional true when it may be missing
 * @param anyOrder true when it may change places with its neighbours that say so, too
 * @param repeat how often it may come in a row
 * @param line line of the guide
 */
public record Part(
    String name, List<Form> forms, boolean optional, boolean anyOrder, int repeat, int line) {
  public Part {
    forms = List.copyOf(forms);
  }

  /** How it may be written, for example {@code {head} or {head}-F}. */
  public String shape() {
    return forms.stream().map(Form::text).collect(Collectors.joining(" or "));
  }
}
