package pressweek.reports.write;

import java.util.List;
import pressweek.reports.markup.Element;

/**
 * A part of a page, which begins a new sheet of paper.
 *
 * @param id its place in the page, and the name of its own file
 * @param heading its heading
 * @param caution what to mind, one line on every sheet; may be empty
 * @param content what is in it; a part without content is left out
 */
record Part(String id, String heading, String caution, List<Element> content) {
  Part {
    content = List.copyOf(content);
  }
}
